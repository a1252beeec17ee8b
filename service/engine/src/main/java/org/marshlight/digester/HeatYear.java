package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;

/** A year of a tank's temperatures and heat flows. Arrays must not be changed. */
final class HeatYear {

  final double[] dailyLiquorC = new double[Months.DAYS_PER_YEAR];
  final double[] monthlyLiquorC = new double[Months.COUNT];
  final double[] monthlyLidC = new double[Months.COUNT];
  final double[] monthlySurfaceC = new double[Months.COUNT];
  final HeatLedger ledger = new HeatLedger();
  final double groundLossWK;
  final double standardGroundLossWK;
  double leastLiquorC = Double.POSITIVE_INFINITY;
  double greatestLiquorC = Double.NEGATIVE_INFINITY;
  double greatestLidC = Double.NEGATIVE_INFINITY;
  int lidHoursAboveScald;

  HeatYear(double groundLossWK, double standardGroundLossWK) {
    this.groundLossWK = groundLossWK;
    this.standardGroundLossWK = standardGroundLossWK;
  }

  void record(int hour, int month, double liquorC, double lidC, double surfaceC) {
    double share = 1.0 / (24 * Months.days(month));
    dailyLiquorC[hour / 24] += liquorC / 24;
    monthlyLiquorC[month] += liquorC * share;
    monthlyLidC[month] += lidC * share;
    monthlySurfaceC[month] += surfaceC * share;
    leastLiquorC = Math.min(leastLiquorC, liquorC);
    greatestLiquorC = Math.max(greatestLiquorC, liquorC);
    greatestLidC = Math.max(greatestLidC, lidC);
    if (lidC > DigesterEstimate.SCALD_C) {
      lidHoursAboveScald++;
    }
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
