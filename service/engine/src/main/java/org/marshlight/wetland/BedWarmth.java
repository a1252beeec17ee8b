package org.marshlight.wetland;

import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.feed.WaterStream;

/**
 * How warm a bed's water is in each month.
 *
 * @param waterC mean temperature along the bed
 * @param outflowC temperature at its end
 * @param along temperatures along the bed
 * @param iceM thickness of ice at the end of the month; nought below gravel
 */
record BedWarmth(double[] waterC, double[] outflowC, WarmthAlongBed[] along, double[] iceM) {

  static BedWarmth of(BedSite bed, WaterStream stream, BedWater water, SiteClimate climate) {
    double[] surroundings = surroundingsC(bed, climate);
    double[] mean = new double[Months.COUNT];
    double[] end = new double[Months.COUNT];
    WarmthAlongBed[] along = new WarmthAlongBed[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double flow = water.meanM3Day(month);
      double inflow = Math.max(0, stream.temperatureC()[month]);
      if (water.inflow()[month] > 0 && flow > 0) {
        double exchange =
            WaterTemperature.exchangeNumber(bed.rates().heatExchange(), bed.areaM2(), flow);
        mean[month] = WaterTemperature.meanC(inflow, surroundings[month], exchange);
        end[month] = WaterTemperature.outflowC(inflow, surroundings[month], exchange);
        along[month] = WarmthAlongBed.of(inflow, surroundings[month], exchange);
      } else {
        mean[month] = surroundings[month];
        end[month] = surroundings[month];
        along[month] = WarmthAlongBed.even(surroundings[month]);
      }
    }
    double[] ice = bed.belowSurface() ? new double[Months.COUNT] : ice(bed, climate);
    return new BedWarmth(mean, end, along, ice);
  }

  /** Air for open water, ground for water below gravel; liquid water is never below freezing. */
  private static double[] surroundingsC(BedSite bed, SiteClimate climate) {
    double[] around =
        bed.belowSurface()
            ? climate
                .ground()
                .monthlyC(
                    bed.design().depthM() / 2 + bed.c().mulchAsSoil() * bed.design().mulchM(),
                    climate.dampingDepthM())
            : climate.airC().clone();
    for (int month = 0; month < Months.COUNT; month++) {
      around[month] = Math.max(0, around[month]);
    }
    return around;
  }

  /** Ice grows with frost degree-days and melts with warm ones; two years give a steady cycle. */
  private static double[] ice(BedSite bed, SiteClimate climate) {
    double[] ice = new double[Months.COUNT];
    double frost = 0;
    for (int month = 0; month < 2 * Months.COUNT; month++) {
      int m = month % Months.COUNT;
      frost = Math.max(0, frost - climate.airC()[m] * Months.days(m));
      ice[m] = Math.min(bed.design().depthM(), WaterTemperature.iceM(bed.c().iceGrowth(), frost));
    }
    return ice;
  }

  /** Month of the coldest water; of several, the first. */
  int coldestMonth() {
    return extremeMonth(-1);
  }

  /** Month of the warmest water; of several, the first. */
  int warmestMonth() {
    return extremeMonth(1);
  }

  private int extremeMonth(int sign) {
    int extreme = 0;
    for (int month = 1; month < Months.COUNT; month++) {
      if (sign * waterC[month] > sign * waterC[extreme]) {
        extreme = month;
      }
    }
    return extreme;
  }
}
