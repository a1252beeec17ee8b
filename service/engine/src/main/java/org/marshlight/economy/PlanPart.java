package org.marshlight.economy;

/** A part of a plan that has a cost of its own. */
public enum PlanPart {
  TANK,
  /** Glass and night insulation. */
  COVER,
  /** Store, pipes and burners. */
  GAS,
  BEDS,
  /** Mash tun, fermenter and still. */
  FUEL,
  COMPOST
}
