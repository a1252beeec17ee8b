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

  /**
   * Whether another carries the same of what is conserved.
   *
   * @param share difference that is let pass, as a share of the greater
   */
  boolean isLike(Carried other, double share) {
    return near(matter.codKg(), other.matter.codKg(), share)
        && near(matter.nitrogenKg(), other.matter.nitrogenKg(), share)
        && near(matter.phosphorusKg(), other.matter.phosphorusKg(), share)
        && near(matter.potassiumKg(), other.matter.potassiumKg(), share)
        && near(matter.fixedSolidsKg(), other.matter.fixedSolidsKg(), share);
  }

  private static boolean near(double one, double other, double share) {
    return Math.abs(one - other) <= share * Math.max(one, other);
  }

  Carried times(double factor) {
    return new Carried(matter.times(factor), bod5Kg * factor, solidsKg * factor);
  }
}
