package org.marshlight.decision;

import org.marshlight.feed.Matter;

/** Nutrients of a year, kg. */
record Nutrients(double nitrogenKg, double phosphorusKg, double potassiumKg) {

  static final Nutrients NONE = new Nutrients(0, 0, 0);

  static Nutrients of(Matter matter) {
    return new Nutrients(matter.nitrogenKg(), matter.phosphorusKg(), matter.potassiumKg());
  }

  Nutrients plus(Nutrients other) {
    return new Nutrients(
        nitrogenKg + other.nitrogenKg,
        phosphorusKg + other.phosphorusKg,
        potassiumKg + other.potassiumKg);
  }
}
