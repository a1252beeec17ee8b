package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;

/**
 * Convection across one air gap, ready for the hour loop: the properties of air are worked out
 * once, by the formulas, for a row of temperatures, and the tilt's part of Hollands' correlation
 * once for the gap.
 */
final class AirGap {

  private static final int COLDEST_K = 180;
  private static final int WARMEST_K = 480;

  /** Rayleigh number of a gap of 1 m for each kelvin across it, by mean temperature. */
  private static final double[] RAYLEIGH_PER_K = new double[WARMEST_K - COLDEST_K + 1];

  private static final double LAST_PLACE = RAYLEIGH_PER_K.length - 1.001;

  private static final double[] CONDUCTIVITY = new double[WARMEST_K - COLDEST_K + 1];

  static {
    for (int i = 0; i < RAYLEIGH_PER_K.length; i++) {
      double mean = COLDEST_K + i;
      RAYLEIGH_PER_K[i] = CoverHeatTransfer.rayleighNumber(mean + 0.5, mean - 0.5, 1);
      CONDUCTIVITY[i] = CoverHeatTransfer.airConductivityWMK(mean);
    }
  }

  private final double perGapM;
  private final double rayleighFactor;
  private final double tiltTerm;

  AirGap(double gapM, double tiltRad) {
    perGapM = 1 / gapM;
    rayleighFactor = gapM * gapM * gapM * FastMath.cos(tiltRad);
    tiltTerm = CoverHeatTransfer.hollandsTiltTerm(tiltRad);
  }

  /**
   * Heat by air from below to above for each kelvin, W/(m2.K); conduction alone if above is warmer.
   */
  double convectionWM2K(double belowK, double aboveK) {
    double place = HourLoop.held((belowK + aboveK) / 2 - COLDEST_K, LAST_PLACE);
    int low = (int) place;
    double share = place - low;
    double conduction = between(CONDUCTIVITY, low, share) * perGapM;
    if (belowK <= aboveK) {
      return conduction;
    }
    double rayleighCosTilt =
        between(RAYLEIGH_PER_K, low, share) * (belowK - aboveK) * rayleighFactor;
    return conduction * CoverHeatTransfer.hollands(rayleighCosTilt, tiltTerm);
  }

  private static double between(double[] row, int low, double share) {
    return row[low] + (row[low + 1] - row[low]) * share;
  }
}
