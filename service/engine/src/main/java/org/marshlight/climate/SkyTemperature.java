package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** The temperature at which the sky radiates. */
public final class SkyTemperature {

  static final double KELVIN = 273.15;

  private SkyTemperature() {}

  /** Emissivity of a clear sky; dew points of -20 to 30 Cel. */
  @Formula(
      id = "climate.clear-sky-emissivity",
      symbol = "eps_0",
      expression = "0.711 + 0.0056 T_d + 0.000073 T_d^2 + 0.013 cos(2 pi t / 24)",
      unit = "1",
      meaning = "Emissivity of a clear sky, t hours after midnight.",
      source = "berdahl-martin-1984")
  public static double clearSkyEmissivity(
      @Argument(symbol = "T_d", unit = "Cel", min = -60, max = 40) double dewPointC,
      @Argument(symbol = "t", unit = "h", min = 0, max = 24) double hour) {
    return 0.711
        + 0.0056 * dewPointC
        + 0.000073 * dewPointC * dewPointC
        + 0.013 * FastMath.cos(FastMath.PI * hour / 12);
  }

  /** How clear the sky is for long waves, from how clear it is for the sun. */
  @Formula(
      id = "climate.long-wave-clearness",
      symbol = "f",
      expression = "1.35 K_T / (0.75 + 2e-5 z) - 0.35, held to 0.05 to 1",
      unit = "1",
      meaning = "Share of the clear sky's long-wave loss that the clouds leave.",
      source = "fao56",
      equation = "cloud factor of 39")
  public static double longWaveClearness(
      @Argument(symbol = "K_T", unit = "1", min = 0, max = 1) double clearness,
      @Argument(symbol = "z", unit = "m", min = -430, max = 6000) double elevationM) {
    return Math.max(0.05, Math.min(1, 1.35 * clearness / (0.75 + 2e-5 * elevationM) - 0.35));
  }

  /** Temperature of a black sky that radiates as much. */
  @Formula(
      id = "climate.sky-temperature",
      symbol = "T_sky",
      expression = "(T_a + 273.15) (1 - f (1 - eps_0))^(1/4) - 273.15",
      unit = "Cel",
      meaning = "Temperature of a black sky that radiates as much as the real one.",
      source = "berdahl-martin-1984",
      equation = "with the cloud factor f")
  public static double skyTemperatureC(
      @Argument(symbol = "T_a", unit = "Cel", min = -70, max = 60) double airC,
      @Argument(symbol = "eps_0", unit = "1", min = 0.3, max = 1.2) double clearSkyEmissivity,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1) double longWaveClearness) {
    double emissivity = 1 - longWaveClearness * (1 - Math.min(1, clearSkyEmissivity));
    return (airC + KELVIN) * Math.sqrt(Math.sqrt(emissivity)) - KELVIN;
  }
}
