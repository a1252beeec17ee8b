package org.marshlight.ethanol;

import java.util.OptionalDouble;

/** The beer strength at which a plan's alcohol is just worth its own heat. */
final class BreakEven {

  /** The search starts this much above the strength that the still leaves behind. */
  private static final double ABOVE_RESIDUE = 1.02;

  private BreakEven() {}

  /**
   * Strength by volume at which the net energy is nought when the same sugar is fermented in more
   * or less water; empty if there is none up to the strength that the yeast bears.
   */
  static OptionalDouble strength(Distillery distillery, Beer beer, double electricityKWh) {
    EthanolCoefficients c = distillery.c();
    double residue =
        distillery.still().kind() == StillKind.POT ? c.potEndStrength() : c.columnEndStrength();
    double low = residue * ABOVE_RESIDUE;
    double high = c.yeastLimit();
    if (beer.ethanolKg() <= 0 || low >= high || net(distillery, beer, high, electricityKWh) <= 0) {
      return OptionalDouble.empty();
    }
    if (net(distillery, beer, low, electricityKWh) >= 0) {
      return OptionalDouble.of(low);
    }
    return OptionalDouble.of(
        Root.of(strength -> net(distillery, beer, strength, electricityKWh), low, high));
  }

  private static double net(
      Distillery distillery, Beer beer, double strength, double electricityKWh) {
    return distillery.run(beer.withStrength(strength), electricityKWh).netKWh();
  }
}
