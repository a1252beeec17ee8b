package org.marshlight.decision;

/** Quantities of a plan that can be changed one at a time to turn a verdict. */
public enum Lever {
  /** Number of people. */
  PEOPLE,
  /** Fresh mass of all feeds together, or of kitchen scraps where nothing is fed. */
  FEED,
  /** Area of the glass; its cost grows with it. */
  GLASS,
  /** Thermal resistance of walls and floor of the tank; a plan gives no cost of it. */
  INSULATION,
  /** Price of the displaced fuel. */
  PRICE,
  /** Time that water stays in the tank, by its volume; the tank's cost grows with it. */
  RETENTION
}
