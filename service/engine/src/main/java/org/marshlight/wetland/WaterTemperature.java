package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How warm water is in a bed, and how thick the ice. */
public final class WaterTemperature {

  /** Heat capacity of water, J/(kg.K). */
  private static final double WATER_HEAT_J_KG_K = 4186;

  private static final double SECONDS_PER_DAY = 86400;
  private static final double WATER_KG_M3 = 1000;

  private WaterTemperature() {}

  @Formula(
      id = "wetland.heat-exchange-number",
      symbol = "phi",
      expression = "U A 86400 / (1000 4186 Q)",
      unit = "1",
      meaning = "How far water comes towards the temperature of its surroundings.",
      source = "kadlec-wallace-2009")
  public static double exchangeNumber(
      @Argument(symbol = "U", unit = "W/(m2.K)", min = 0, max = 1000) double conductanceWM2K,
      @Argument(symbol = "A", unit = "m2", min = 0, max = 1e9) double areaM2,
      @Argument(symbol = "Q", unit = "m3/d", min = 1e-9, max = 1e9) double flowM3Day) {
    return conductanceWM2K
        * areaM2
        * SECONDS_PER_DAY
        / (WATER_KG_M3 * WATER_HEAT_J_KG_K * flowM3Day);
  }

  @Formula(
      id = "wetland.mean-water-temperature",
      symbol = "T_w",
      expression = "T_e + (T_i - T_e) (1 - exp(-phi)) / phi",
      unit = "Cel",
      meaning = "Mean temperature of water along a bed.",
      source = "kadlec-wallace-2009")
  public static double meanC(
      @Argument(symbol = "T_i", unit = "Cel", min = -60, max = 120) double inflowC,
      @Argument(symbol = "T_e", unit = "Cel", min = -60, max = 120) double surroundingsC,
      @Argument(symbol = "phi", unit = "1", min = 0, max = 1e12) double exchangeNumber) {
    return surroundingsC + (inflowC - surroundingsC) * meanShare(exchangeNumber);
  }

  private static double meanShare(double exchangeNumber) {
    return exchangeNumber < 1e-6 ? 1 : -FastMath.expm1(-exchangeNumber) / exchangeNumber;
  }

  @Formula(
      id = "wetland.outflow-temperature",
      symbol = "T_o",
      expression = "T_e + (T_i - T_e) exp(-phi)",
      unit = "Cel",
      meaning = "Temperature of water at the end of a bed.",
      source = "kadlec-wallace-2009")
  public static double outflowC(
      @Argument(symbol = "T_i", unit = "Cel", min = -60, max = 120) double inflowC,
      @Argument(symbol = "T_e", unit = "Cel", min = -60, max = 120) double surroundingsC,
      @Argument(symbol = "phi", unit = "1", min = 0, max = 1e12) double exchangeNumber) {
    return surroundingsC + (inflowC - surroundingsC) * FastMath.exp(-exchangeNumber);
  }

  @Formula(
      id = "wetland.ice-thickness",
      symbol = "h",
      expression = "sqrt(c FDD)",
      unit = "m",
      meaning = "Ice on open water after a sum of frost degree-days (Stefan).",
      source = "stefan-ice")
  public static double iceM(
      @Argument(symbol = "c", unit = "m2/(K.d)", min = 0, max = 0.01) double growth,
      @Argument(symbol = "FDD", unit = "K.d", min = 0, max = 1e5) double frostDegreeDays) {
    return Math.sqrt(growth * frostDegreeDays);
  }
}
