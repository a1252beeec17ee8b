package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;

/**
 * Convection across one air gap, ready for the hour loop: the properties of air and the tilt's part
 * of Hollands' correlation are worked out once, by the formulas, for a row of temperatures.
 */
final class AirGap {

  private static final int COLDEST_K = 180;
  private static final int WARMEST_K = 480;

  private final double cosTilt;
  private final double sineTerm;
  private final double[] rayleighPerK = new double[WARMEST_K - COLDEST_K + 1];
  private final double[] conductionWM2K = new double[WARMEST_K - COLDEST_K + 1];

  AirGap(double gapM, double tiltRad) {
    cosTilt = FastMath.cos(tiltRad);
    sineTerm = CoverHeatTransfer.hollandsTiltTerm(tiltRad);
    for (int i = 0; i < rayleighPerK.length; i++) {
      double mean = COLDEST_K + i;
      rayleighPerK[i] = CoverHeatTransfer.rayleighNumber(mean + 0.5, mean - 0.5, gapM);
      conductionWM2K[i] = CoverHeatTransfer.airConductivityWMK(mean) / gapM;
    }
  }

  /**
   * Heat by air from below to above for each kelvin, W/(m2.K); conduction alone if above is warmer.
   */
  double convectionWM2K(double belowK, double aboveK) {
    double place =
        Math.max(0, Math.min(rayleighPerK.length - 1.001, (belowK + aboveK) / 2 - COLDEST_K));
    int low = (int) place;
    double share = place - low;
    double conduction = conductionWM2K[low] * (1 - share) + conductionWM2K[low + 1] * share;
    if (belowK <= aboveK) {
      return conduction;
    }
    double rayleigh =
        (rayleighPerK[low] * (1 - share) + rayleighPerK[low + 1] * share) * (belowK - aboveK);
    return conduction * CoverHeatTransfer.hollands(rayleigh * cosTilt, sineTerm);
  }
}
