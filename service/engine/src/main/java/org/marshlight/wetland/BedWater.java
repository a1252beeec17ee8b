package org.marshlight.wetland;

import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.feed.WaterStream;

/**
 * A bed's water month by month, m3. The bed holds as much at the end of a month as at its start.
 *
 * @param inflow what enters the bed
 * @param passing what is led past it
 * @param rain rain on its area
 * @param evaporated what leaves to the air; never more than comes
 * @param outflow what leaves at its end, without what passes by
 * @param waterShare water evaporated over what would be if there were enough
 * @param flushed share of what is dissolved at a month's end that leaves with the outflow
 */
record BedWater(
    double[] inflow,
    double[] passing,
    double[] rain,
    double[] evaporated,
    double[] outflow,
    double[] waterShare,
    double[] flushed) {

  private static final double MM_PER_M = 1000;

  /** Less than this share of what comes is rounding, not a flow. */
  private static final double ROUNDING = 1e-12;

  /** Whether anything ever leaves with the water. */
  boolean isEverFlushed() {
    return Months.sum(flushed) > 0;
  }

  static BedWater of(BedSite bed, WaterStream stream, Stand<?> stand, SiteClimate climate) {
    BedWater water = empty();
    double full =
        WaterBalance.fullCropCoefficient(
            stand.smallStandCropCoefficient(),
            bed.c().fieldCropCoefficient(),
            bed.areaM2(),
            bed.c().smallStandArea(),
            bed.c().fieldArea());
    double[] canopy = stand.canopy();
    for (int month = 0; month < Months.COUNT; month++) {
      double flow = stream.volumeM3(month);
      boolean passedBy = bed.design().passedBy(month);
      water.inflow[month] = passedBy ? 0 : flow;
      water.passing[month] = passedBy ? flow : 0;
      water.rain[month] = climate.rainMm()[month] / MM_PER_M * bed.areaM2();
      double crop =
          WaterBalance.cropCoefficient(bed.rates().dormantCropCoefficient(), full, canopy[month]);
      double wanted =
          crop * climate.referenceEtMmDay()[month] / MM_PER_M * bed.areaM2() * Months.days(month);
      water.balance(month, wanted, bed.c().greatestConcentration());
    }
    return water;
  }

  private static BedWater empty() {
    return new BedWater(
        new double[Months.COUNT],
        new double[Months.COUNT],
        new double[Months.COUNT],
        new double[Months.COUNT],
        new double[Months.COUNT],
        new double[Months.COUNT],
        new double[Months.COUNT]);
  }

  private void balance(int month, double wanted, double greatestConcentration) {
    double comes = inflow[month] + rain[month];
    double left = comes - wanted;
    outflow[month] = left > ROUNDING * comes ? left : 0;
    evaporated[month] = comes - outflow[month];
    waterShare[month] = wanted > 0 ? Math.min(1, comes / wanted) : 1;
    flushed[month] = comes > 0 ? Math.min(1, outflow[month] * greatestConcentration / comes) : 0;
  }

  /**
   * Volume in which a month's load stands: what flowed in, or what the bed holds if nothing did.
   */
  double standingM3(BedSite bed, int month) {
    return inflow[month] > 0 ? inflow[month] : bed.waterM3();
  }

  /** Mean of what enters and leaves, m3/d: the flow that the kinetics see. */
  double meanM3Day(int month) {
    return (inflow[month] + outflow[month]) / 2 / Months.days(month);
  }
}
