package org.marshlight.compost;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Heat that a heap makes and loses. */
public final class HeapHeat {

  private static final double MJ_PER_KWH = 3.6;
  private static final double STANDARD_KPA = 101.325;

  /** Molar mass of water over that of air. */
  private static final double WATER_TO_AIR = 0.622;

  /** Oxygen in dry air by mass. */
  private static final double OXYGEN_OF_AIR = 0.2314;

  private static final double HEAT_CAPACITY_OF_AIR_MJ_KG_K = 1.006e-3;

  /** Logarithms of the bases of the rate's rise and fall, for each kelvin. */
  private static final double RISE = FastMath.log(1.066);

  private static final double FALL = FastMath.log(1.21);

  private HeapHeat() {}

  /** Heat of the oxygen taken up. */
  @Formula(
      id = "compost.heat-of-oxygen",
      symbol = "Q",
      expression = "O2 h / 3.6",
      unit = "kW.h",
      meaning = "Heat set free with the oxygen that a heap takes up, which is the COD it loses.",
      source = "haug-1993")
  public static double heatKWh(
      @Argument(symbol = "O2", unit = "kg", min = 0, max = 1e9) double oxygenKg,
      @Argument(symbol = "h", unit = "MJ/kg", min = 10, max = 20) double heatOfOxygenMJKg) {
    return oxygenKg * heatOfOxygenMJKg / MJ_PER_KWH;
  }

  /** Speed of decay with temperature. */
  @Formula(
      id = "compost.decay-rate",
      symbol = "k",
      expression = "k_20 (1.066^(T - 20) - 1.21^(T - 60)), at least 0",
      unit = "/d",
      meaning = "First-order rate at which what can decay does so, at the heap's temperature.",
      source = "haug-1993",
      equation = "rate with temperature")
  public static double decayRatePerDay(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 100) double temperatureC,
      @Argument(symbol = "k_20", unit = "/d", min = 0, max = 1) double rateAt20PerDay) {
    double warmed =
        FastMath.exp(RISE * (temperatureC - 20)) - FastMath.exp(FALL * (temperatureC - 60));
    return rateAt20PerDay * Math.max(0, warmed);
  }

  /** Outside of a heap. */
  @Formula(
      id = "compost.heap-surface",
      symbol = "A",
      expression =
          "2 pi r^2, r = (3 V / (2 pi))^(1/3); where r > h: 2 pi h^2 + 2 (V - 2 pi h^3 / 3) / h",
      unit = "m2",
      meaning =
          "Outside of a heap without its base: half a ball, or, where that would stand higher than"
              + " allowed, half a round bar of that height with rounded ends.",
      source = "house-choice")
  public static double surfaceM2(
      @Argument(symbol = "V", unit = "m3", min = 0, max = 1e9) double volumeM3,
      @Argument(symbol = "h", unit = "m", min = 0.1, max = 5) double greatestHeightM) {
    double radius = FastMath.cbrt(3 * volumeM3 / (2 * Math.PI));
    if (radius <= greatestHeightM) {
      return 2 * Math.PI * radius * radius;
    }
    double ends = 2 * Math.PI * greatestHeightM * greatestHeightM * greatestHeightM / 3;
    return 2 * Math.PI * greatestHeightM * greatestHeightM
        + 2 * (volumeM3 - ends) / greatestHeightM;
  }

  /** Heat lost through the outside of a heap. */
  @Formula(
      id = "compost.surface-conductance",
      symbol = "U",
      expression = "1 / (r_s + (V/A) / lambda)",
      unit = "W/(m2.K)",
      meaning =
          "Heat that passes from the middle of a heap through each square metre of its outside: a"
              + " layer as thick as volume over surface, and the air film.",
      source = "common-practice")
  public static double surfaceConductanceWM2K(
      @Argument(symbol = "V/A", unit = "m", min = 0, max = 100) double volumeToSurfaceM,
      @Argument(symbol = "lambda", unit = "W/(m.K)", min = 0.05, max = 2) double conductivityWMK,
      @Argument(symbol = "r_s", unit = "m2.K/W", min = 0.01, max = 1) double filmM2KW) {
    return 1 / (filmM2KW + volumeToSurfaceM / conductivityWMK);
  }

  /** Water that saturated air holds. */
  @Formula(
      id = "compost.saturated-humidity",
      symbol = "w",
      expression = "0.622 e / (101.325 - e), e = 0.6112 exp(17.62 T / (243.12 + T))",
      unit = "kg/kg",
      meaning = "Water in a kilogram of dry air that is saturated, at 101.325 kPa.",
      source = "common-practice",
      equation = "Magnus")
  public static double saturatedHumidity(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 95) double temperatureC) {
    double pressure = 0.6112 * FastMath.exp(17.62 * temperatureC / (243.12 + temperatureC));
    return WATER_TO_AIR * pressure / (STANDARD_KPA - pressure);
  }

  /** Heat that the air carries off. */
  @Formula(
      id = "compost.heat-of-air",
      symbol = "q_a",
      expression = "n / 0.2314 (l (w(T) - w(T_a)) + 0.001006 (T - T_a)), at least 0",
      unit = "MJ/kg",
      meaning =
          "Heat carried off for each kilogram of oxygen taken up, by air that enters damp and"
              + " leaves saturated.",
      source = "haug-1993",
      equation = "balance of the air")
  public static double heatOfAirMJKg(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 95) double temperatureC,
      @Argument(symbol = "T_a", unit = "Cel", min = -60, max = 50) double airTemperatureC,
      @Argument(symbol = "n", unit = "1", min = 1, max = 30) double airExcess,
      @Argument(symbol = "l", unit = "MJ/kg", min = 2, max = 3) double evaporationMJKg) {
    return heatOfAirMJKg(
        temperatureC,
        airTemperatureC,
        saturatedHumidity(temperatureC) - saturatedHumidity(airTemperatureC),
        airExcess,
        evaporationMJKg);
  }

  /** The same for air of which it is known how much water it takes up, kg/kg. */
  static double heatOfAirMJKg(
      double temperatureC,
      double airTemperatureC,
      double water,
      double airExcess,
      double evaporationMJKg) {
    double air = airExcess / OXYGEN_OF_AIR;
    return Math.max(
        0,
        air
            * (evaporationMJKg * water
                + HEAT_CAPACITY_OF_AIR_MJ_KG_K * (temperatureC - airTemperatureC)));
  }
}
