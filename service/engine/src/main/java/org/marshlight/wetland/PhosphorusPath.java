package org.marshlight.wetland;

import java.util.List;
import org.marshlight.contract.Months;

/** Phosphorus through a row of beds at an age other than that of the headline figures. */
final class PhosphorusPath {

  private PhosphorusPath() {}

  /** Areal rate of removal of a bed in a year of its life, m/a. */
  static double rate(BedSite bed, double yearOfLife) {
    return TanksInSeries.phosphorusRateAtAgeMYear(
        bed.rates().phosphorusRateYoung(),
        bed.rates().phosphorusRateOld(),
        bed.c().phosphorusAgeing(),
        yearOfLife);
  }

  /**
   * Phosphorus that leaves the last bed in each month, kg. The stands are taken to grow as in the
   * headline year, on no more than there is.
   */
  static double[] outflowKg(List<? extends BedYear<?>> years, double yearOfLife) {
    double[] flow = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      flow[month] = years.get(0).inflow().monthly().get(month).phosphorusKg();
    }
    for (BedYear<?> year : years) {
      flow = through(year, flow, rate(year.bed(), yearOfLife));
    }
    return flow;
  }

  private static double[] through(BedYear<?> year, double[] inflow, double rate) {
    BedSite bed = year.bed();
    BedWater water = year.water();
    double[] outflow = new double[Months.COUNT];
    UptakeFromWater uptake = UptakeFromWater.of(bed, year.growth());
    double kept = 0;
    for (int step = 0; step < 2 * Months.COUNT; step++) {
      int month = step % Months.COUNT;
      boolean passedBy = bed.design().passedBy(month);
      double load = kept + (passedBy ? 0 : inflow[month]);
      double left =
          BedMonth.phosphorusLeftKg(
              bed,
              load,
              Math.min(load, uptake.phosphorus()[month]),
              water.standingM3(bed, month),
              TanksInSeries.hydraulicLoadingMYear(water.meanM3Day(month), bed.areaM2()),
              rate);
      outflow[month] = left * water.flushed()[month] + (passedBy ? inflow[month] : 0);
      kept = left * (1 - water.flushed()[month]);
    }
    return outflow;
  }
}
