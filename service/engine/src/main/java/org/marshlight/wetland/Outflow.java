package org.marshlight.wetland;

import org.marshlight.feed.WaterStream;

/**
 * What leaves the last bed, as its use looks at it; the arrays are not to be changed.
 *
 * @param stream the water
 * @param dissolvedSolidsKg minerals dissolved in it in each month, those of the water supply
 *     included
 * @param saltFactor salts in each month over those of the water that comes to the beds; not a
 *     number in a month without outflow
 */
record Outflow(WaterStream stream, double[] dissolvedSolidsKg, double[] saltFactor) {

  static Outflow of(BedChain<?> chain) {
    double supplied = chain.years().get(0).bed().c().suppliedMinerals();
    return new Outflow(
        chain.outflow(), Salinity.leavingKg(chain, supplied), Salinity.factor(chain));
  }
}
