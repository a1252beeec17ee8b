package org.marshlight.wetland;

import org.marshlight.feed.WaterStream;

/**
 * What leaves the last bed, as its use looks at it; the array is not to be changed.
 *
 * @param stream the water
 * @param dissolvedSolidsKg minerals dissolved in it in each month, those of the water supply
 *     included
 */
record Outflow(WaterStream stream, double[] dissolvedSolidsKg) {

  static Outflow of(BedChain<?> chain) {
    double supplied = chain.years().get(0).bed().c().suppliedMinerals();
    return new Outflow(chain.outflow(), Salinity.leavingKg(chain, supplied));
  }
}
