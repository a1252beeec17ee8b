package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.statistics.EvenTable;

/**
 * Convection across one air gap, ready for the hour loop: the properties of air are worked out
 * once, by the formulas, for a row of temperatures, and the tilt's part of Hollands' correlation
 * once for the gap.
 */
final class AirGap {

  private static final int COLDEST_K = 180;
  private static final int WARMEST_K = 480;

  /** Rayleigh number of a gap of 1 m for each kelvin across it, by mean temperature. */
  private static final EvenTable RAYLEIGH_PER_K =
      EvenTable.of(
          mean -> CoverHeatTransfer.rayleighNumber(mean + 0.5, mean - 0.5, 1),
          COLDEST_K,
          WARMEST_K,
          1);

  private static final EvenTable CONDUCTIVITY =
      EvenTable.of(CoverHeatTransfer::airConductivityWMK, COLDEST_K, WARMEST_K, 1);

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
    double mean = (belowK + aboveK) / 2;
    double conduction = CONDUCTIVITY.at(mean) * perGapM;
    if (belowK <= aboveK) {
      return conduction;
    }
    double rayleighCosTilt = RAYLEIGH_PER_K.at(mean) * (belowK - aboveK) * rayleighFactor;
    return conduction * CoverHeatTransfer.hollands(rayleighCosTilt, tiltTerm);
  }
}
