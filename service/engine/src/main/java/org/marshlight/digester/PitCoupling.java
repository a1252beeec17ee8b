package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Heat between a small sunk tank and the ground. ISO 13370's heated basement, made for houses,
 * falls up to 45 percent short for pits of a few cubic metres; these forms have its three parts
 * (steady, internal swing, external swing) with numbers fitted to a finite-volume solution of pits
 * of 1 to 40 m3 in soils of 0.9 to 2.1 W/(m.K): steady and internal parts within 12 percent, the
 * external one within 15 percent and eight days.
 */
public final class PitCoupling {

  private PitCoupling() {}

  /** Conduction shape factor: that of a sphere of the pit's surface, raised by the near ground. */
  @Formula(
      id = "digester.pit-shape-factor",
      symbol = "S",
      expression = "sqrt(4 pi) (A_w / sqrt(A_s)) (1 + 0.146 sqrt(A_s) / z)",
      unit = "m",
      meaning = "Conduction shape factor from a pit's wetted surface to the ground's surface.",
      source = "pit-conduction")
  public static double shapeFactorM(
      @Argument(symbol = "A_w", unit = "m2", min = 0.01, max = 20000) double wettedAreaM2,
      @Argument(symbol = "A_s", unit = "m2", min = 0.01, max = 30000) double surfaceM2,
      @Argument(symbol = "z", unit = "m", min = 0.05, max = 20) double middleDepthM) {
    double root = Math.sqrt(surfaceM2);
    return Math.sqrt(4 * FastMath.PI) * wettedAreaM2 / root * (1 + 0.146 * root / middleDepthM);
  }

  /** Wall and soil in series. */
  @Formula(
      id = "digester.pit-steady-loss",
      symbol = "H",
      expression = "1 / (R / A_w + 1 / (lambda S))",
      unit = "W/K",
      meaning = "Steady loss of a pit for each kelvin above the ground's surface.",
      source = "pit-conduction")
  public static double steadyLossWK(
      @Argument(symbol = "R", unit = "m2.K/W", min = 0.0001, max = 20) double resistance,
      @Argument(symbol = "A_w", unit = "m2", min = 0.01, max = 20000) double wettedAreaM2,
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.01, max = 10) double conductivity,
      @Argument(symbol = "S", unit = "m", min = 0.01, max = 100000) double shapeFactorM) {
    return 1 / (resistance / wettedAreaM2 + 1 / (conductivity * shapeFactorM));
  }

  /** Loss that follows the liquor's own yearly swing. */
  @Formula(
      id = "digester.pit-internal-loss",
      symbol = "H_i",
      expression = "H (1 + 0.115 s (sqrt(A_s) / (1.85 delta))^1.85)",
      unit = "W/K",
      meaning =
          "Loss of a pit for each kelvin that the liquor is above its mean over the year; s is the"
              + " soil's share of the whole resistance.",
      source = "pit-conduction")
  public static double internalLossWK(
      @Argument(symbol = "H", unit = "W/K", min = 0, max = 100000) double steadyWK,
      @Argument(symbol = "s", unit = "1", min = 0, max = 1) double soilShare,
      @Argument(symbol = "A_s", unit = "m2", min = 0.01, max = 30000) double surfaceM2,
      @Argument(symbol = "delta", unit = "m", min = 0.1, max = 20) double penetrationM) {
    double size = Math.sqrt(surfaceM2) / (1.85 * penetrationM);
    return steadyWK * (1 + 0.115 * soilShare * FastMath.pow(size, 1.85));
  }

  /** Loss that follows the ground surface's yearly swing. */
  @Formula(
      id = "digester.pit-external-swing",
      symbol = "H_e",
      expression = "H exp(-(1.48 - 0.45 s) z / delta)",
      unit = "W/K",
      meaning = "Swing of a pit's loss for each kelvin of the ground surface's yearly swing.",
      source = "pit-conduction")
  public static double externalSwingWK(
      @Argument(symbol = "H", unit = "W/K", min = 0, max = 100000) double steadyWK,
      @Argument(symbol = "s", unit = "1", min = 0, max = 1) double soilShare,
      @Argument(symbol = "z", unit = "m", min = 0.05, max = 20) double middleDepthM,
      @Argument(symbol = "delta", unit = "m", min = 0.1, max = 20) double penetrationM) {
    return steadyWK * FastMath.exp(-(1.48 - 0.45 * soilShare) * middleDepthM / penetrationM);
  }

  /** Lag of that loss. */
  @Formula(
      id = "digester.pit-external-lag",
      symbol = "t_e",
      expression = "(365 / 2 pi) (1.2 - 0.45 s) z / delta",
      unit = "d",
      meaning = "Days by which a pit's greatest loss lags the coldest ground surface.",
      source = "pit-conduction")
  public static double externalLagDays(
      @Argument(symbol = "s", unit = "1", min = 0, max = 1) double soilShare,
      @Argument(symbol = "z", unit = "m", min = 0.05, max = 20) double middleDepthM,
      @Argument(symbol = "delta", unit = "m", min = 0.1, max = 20) double penetrationM) {
    return 365 / (2 * FastMath.PI) * (1.2 - 0.45 * soilShare) * middleDepthM / penetrationM;
  }
}
