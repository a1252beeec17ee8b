package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How the air's temperature swings through a day of a month. */
public final class AirTemperatureWave {

  private AirTemperatureWave() {}

  /** Range of the day from the month's clearness; used where extremes are not given. */
  @Formula(
      id = "climate.daily-temperature-range",
      symbol = "A",
      expression = "25.8 K_T - 5.21",
      unit = "K",
      meaning = "Highest minus lowest temperature of the mean day of a month.",
      source = "erbs-1983")
  public static double dailyRangeK(
      @Argument(symbol = "K_T", unit = "1", min = 0, max = 1) double clearness) {
    return 25.8 * clearness - 5.21;
  }

  /** Departure from the day's mean over the day's range. */
  @Formula(
      id = "climate.daily-temperature-wave",
      symbol = "(T - T_m)/A",
      expression =
          "0.4632 cos(t - 3.805) + 0.0984 cos(2t - 0.360) + 0.0168 cos(3t - 0.822)"
              + " + 0.0138 cos(4t - 3.513); t = 2 pi (h - 1) / 24",
      unit = "1",
      meaning = "Departure of the air's temperature from the day's mean over the day's range.",
      source = "erbs-1983")
  public static double departure(
      @Argument(symbol = "h", unit = "h", min = 0, max = 24) double solarHour) {
    double t = 2 * FastMath.PI * (solarHour - 1) / 24;
    return 0.4632 * FastMath.cos(t - 3.805)
        + 0.0984 * FastMath.cos(2 * t - 0.360)
        + 0.0168 * FastMath.cos(3 * t - 0.822)
        + 0.0138 * FastMath.cos(4 * t - 3.513);
  }
}
