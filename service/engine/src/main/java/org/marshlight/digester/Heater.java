package org.marshlight.digester;

/**
 * A coil in the liquor, fed with the gas that was left over the day before. It gives all it has
 * until the liquor is a kelvin below its set point, and less from there on.
 *
 * @param availableW heat that it can give on each day
 * @param setPointC temperature at which it gives none
 */
record Heater(double[] availableW, double setPointC) {

  /** No heater. */
  static final Heater NONE = new Heater(new double[0], Double.NEGATIVE_INFINITY);

  /** Share of the heat available that it gives to liquor of that temperature, 0 to 1. */
  double share(double liquorC) {
    return liquorC >= setPointC ? 0 : Math.min(1, setPointC - liquorC);
  }
}
