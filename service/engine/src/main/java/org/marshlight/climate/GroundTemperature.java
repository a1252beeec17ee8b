package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Temperature of undisturbed ground. */
public final class GroundTemperature {

  private GroundTemperature() {}

  /** Depth at which the year's swing is down to 1/e. */
  @Formula(
      id = "climate.damping-depth",
      symbol = "D",
      expression = "sqrt(365 86400 alpha / pi)",
      unit = "m",
      meaning = "Depth at which the year's temperature swing has fallen to 1/e.",
      source = "kusuda-achenbach-1965")
  public static double dampingDepthM(
      @Argument(symbol = "alpha", unit = "m2/s", min = 1e-8, max = 1e-5) double diffusivity) {
    return Math.sqrt(365.0 * 86400 * diffusivity / FastMath.PI);
  }

  /** Temperature at a depth and day. */
  @Formula(
      id = "climate.ground-temperature",
      symbol = "T(z,t)",
      expression = "T_m - A exp(-z/D) cos(2 pi (t - t_0) / 365 - z/D)",
      unit = "Cel",
      meaning = "Temperature of undisturbed ground.",
      source = "kusuda-achenbach-1965")
  public static double temperatureC(
      @Argument(symbol = "z", unit = "m", min = 0, max = 50) double depthM,
      @Argument(symbol = "t", unit = "d", min = 0, max = 366) double day,
      @Argument(symbol = "T_m", unit = "Cel", min = -60, max = 60) double surfaceMeanC,
      @Argument(symbol = "A", unit = "K", min = 0, max = 60) double surfaceAmplitudeK,
      @Argument(symbol = "t_0", unit = "d", min = 0, max = 366) double coldestDay,
      @Argument(symbol = "D", unit = "m", min = 0.1, max = 20) double dampingDepthM) {
    double ratio = depthM / dampingDepthM;
    return surfaceMeanC
        - surfaceAmplitudeK
            * FastMath.exp(-ratio)
            * FastMath.cos(2 * FastMath.PI * (day - coldestDay) / 365 - ratio);
  }
}
