package org.marshlight.digester;

/**
 * Heat that a mass holds.
 *
 * @param wattHoursPerK heat for each kelvin
 */
record HeldHeat(double wattHoursPerK) {

  private static final double HOUR_S = 3600;

  /** Heat held by a mass of this heat capacity in joules for each kelvin. */
  static HeldHeat ofJoules(double joulesPerK) {
    return new HeldHeat(joulesPerK / HOUR_S);
  }

  HeldHeat half() {
    return new HeldHeat(wattHoursPerK / 2);
  }

  /** Power that warms it by a kelvin in a step of these hours. */
  double wattsPerK(double hours) {
    return wattHoursPerK / hours;
  }
}
