package org.marshlight.wetland;

import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;

/**
 * What a stand takes out of a bed's water in each month, kg. Roots take up again what decaying
 * litter sets free before it reaches the water, as the published rates of removal imply, which are
 * net of it: so of a year's uptake only what is harvested, buried or grown on comes from the water.
 *
 * @param nitrogen nitrogen in each month
 * @param phosphorus phosphorus in each month
 * @param potassium potassium in each month
 */
record UptakeFromWater(double[] nitrogen, double[] phosphorus, double[] potassium) {

  static UptakeFromWater of(BedSite bed, StandGrowth growth) {
    Matter returned = growth.litter().minus(BedYear.buriedLitter(bed, growth));
    return new UptakeFromWater(
        less(growth.nitrogenUptakeKg(), returned.nitrogenKg()),
        less(growth.phosphorusUptakeKg(), returned.phosphorusKg()),
        less(growth.potassiumUptakeKg(), returned.potassiumKg()));
  }

  /** Each month's uptake less an even share of what comes back. */
  private static double[] less(double[] uptake, double returned) {
    double year = Months.sum(uptake);
    double share = year > 0 ? 1 - returned / year : 0;
    double[] net = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      net[month] = share * uptake[month];
    }
    return net;
  }

  /** What is taken in a month, nitrogen as organic. */
  Matter in(int month) {
    return new Matter(0, 0, 0, 0, 0, 0, nitrogen[month], 0, 0, phosphorus[month], potassium[month]);
  }
}
