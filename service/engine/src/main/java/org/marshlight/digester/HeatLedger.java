package org.marshlight.digester;

import org.marshlight.contract.Months;

/**
 * Heat that crossed the border of liquor, lid and glazing in each month, kWh, positive inwards, and
 * the change of what they hold.
 */
final class HeatLedger {

  private static final double KWH_PER_WATT_HOUR = 1e-3;

  final double[] absorbedSun = new double[Months.COUNT];
  final double[] topToAir = new double[Months.COUNT];
  final double[] topToSky = new double[Months.COUNT];
  final double[] enclosure = new double[Months.COUNT];
  final double[] coverSoil = new double[Months.COUNT];
  final double[] ground = new double[Months.COUNT];
  final double[] inflow = new double[Months.COUNT];
  final double[] stored = new double[Months.COUNT];

  /** Adds an hour's mean power to a line. */
  static void add(double[] line, int month, double watts) {
    line[month] += watts * KWH_PER_WATT_HOUR;
  }
}
