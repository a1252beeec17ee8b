package org.marshlight.digester;

import org.marshlight.contract.Months;

/**
 * Heat that crossed the border of liquor, lid and glazing in each month, kWh, positive inwards, and
 * the change of what they hold.
 */
final class HeatLedger {

  private final double kWhPerWatt;

  final double[] absorbedSun = new double[Months.COUNT];
  final double[] topToAir = new double[Months.COUNT];
  final double[] topToSky = new double[Months.COUNT];
  final double[] enclosure = new double[Months.COUNT];
  final double[] coverSoil = new double[Months.COUNT];
  final double[] ground = new double[Months.COUNT];
  final double[] inflow = new double[Months.COUNT];
  final double[] burnedGas = new double[Months.COUNT];
  final double[] stored = new double[Months.COUNT];

  /** Inside the border, for the report: heat that passed from the lid down to the liquor. */
  final double[] lidToLiquor = new double[Months.COUNT];

  /** Before the border, for the report: sun that fell on glass or bare ground. */
  final double[] sunOnTop = new double[Months.COUNT];

  /**
   * Empty books.
   *
   * @param stepH length of a step, hours
   */
  HeatLedger(double stepH) {
    kWhPerWatt = stepH / 1000;
  }

  /** Adds a step's mean power to a line. */
  void add(double[] line, int month, double watts) {
    line[month] += watts * kWhPerWatt;
  }
}
