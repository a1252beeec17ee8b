package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;

/** A year of a tank's temperatures and heat flows. Arrays must not be changed. */
final class HeatYear {

  final double[] dailyLiquorC = new double[Months.DAYS_PER_YEAR];

  /** Share of the heat available that a heater gave on each day, summed over the day's steps. */
  final double[] heaterSharesOfDay = new double[Months.DAYS_PER_YEAR];

  final double[] monthlyLiquorC = new double[Months.COUNT];
  final double[] monthlyLidC = new double[Months.COUNT];
  final double[] monthlySurfaceC = new double[Months.COUNT];
  final HeatLedger ledger;
  final double groundLossWK;
  final double standardGroundLossWK;
  final double stepH;
  private final double shareOfDay;
  private final double[] shareOfMonth = new double[Months.COUNT];
  double leastLiquorC = Double.POSITIVE_INFINITY;
  double greatestLiquorC = Double.NEGATIVE_INFINITY;
  double greatestLidC = Double.NEGATIVE_INFINITY;
  double leastSurfaceC = Double.POSITIVE_INFINITY;
  double greatestSurfaceC = Double.NEGATIVE_INFINITY;
  double lidHoursAboveScald;

  /**
   * A year of which nothing is recorded.
   *
   * @param stepH length of a step, hours
   */
  HeatYear(double groundLossWK, double standardGroundLossWK, double stepH) {
    this.stepH = stepH;
    this.shareOfDay = stepH / 24;
    this.ledger = new HeatLedger(stepH);
    this.groundLossWK = groundLossWK;
    this.standardGroundLossWK = standardGroundLossWK;
    for (int month = 0; month < Months.COUNT; month++) {
      shareOfMonth[month] = stepH / (24 * Months.days(month));
    }
  }

  /**
   * Records the temperatures at the end of a step.
   *
   * @param day day of the year
   * @param month its month
   */
  void record(int day, int month, double liquorC, double lidC, double surfaceC) {
    double share = shareOfMonth[month];
    dailyLiquorC[day] += liquorC * shareOfDay;
    monthlyLiquorC[month] += liquorC * share;
    monthlyLidC[month] += lidC * share;
    monthlySurfaceC[month] += surfaceC * share;
    leastLiquorC = least(leastLiquorC, liquorC);
    greatestLiquorC = greatest(greatestLiquorC, liquorC);
    greatestLidC = greatest(greatestLidC, lidC);
    leastSurfaceC = least(leastSurfaceC, surfaceC);
    greatestSurfaceC = greatest(greatestSurfaceC, surfaceC);
    if (lidC > DigesterEstimate.SCALD_C) {
      lidHoursAboveScald += stepH;
    }
  }

  // A branch that a processor foresees: the language's own bounds cost the loop of hours dear.
  private static double least(double one, double other) {
    return other < one ? other : one;
  }

  private static double greatest(double one, double other) {
    return other > one ? other : one;
  }

  /** Share of the heat available that a heater gave on a day, 0 to 1; rounding may not pass 1. */
  double heaterShare(int day) {
    return Math.min(1, heaterSharesOfDay[day] * shareOfDay);
  }

  /** Mean liquor temperature of the year, Cel. */
  double meanLiquorC() {
    double sum = 0;
    for (double day : dailyLiquorC) {
      sum += day;
    }
    return sum / (ClimateYear.HOURS / 24);
  }
}
