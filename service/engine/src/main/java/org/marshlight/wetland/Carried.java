package org.marshlight.wetland;

import org.marshlight.feed.Matter;

/**
 * What water carries, without the water.
 *
 * @param matter what is conserved
 * @param bod5Kg five-day biochemical oxygen demand
 * @param solidsKg suspended solids
 */
record Carried(Matter matter, double bod5Kg, double solidsKg) {

  static final Carried NONE = new Carried(Matter.NONE, 0, 0);

  Carried plus(Carried other) {
    return new Carried(matter.plus(other.matter), bod5Kg + other.bod5Kg, solidsKg + other.solidsKg);
  }

  Carried times(double factor) {
    return new Carried(matter.times(factor), bod5Kg * factor, solidsKg * factor);
  }
}
