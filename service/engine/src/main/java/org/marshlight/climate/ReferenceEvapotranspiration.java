package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Reference evapotranspiration of FAO-56 and the vapour and radiation terms that it needs. */
public final class ReferenceEvapotranspiration {

  /** Stefan-Boltzmann constant as FAO-56 prints it, MJ m-2 K-4 d-1. */
  private static final double SIGMA_MJ = 4.903e-9;

  /** Kelvin at nought Celsius as FAO-56 prints it. */
  private static final double FAO_KELVIN = 273.16;

  private ReferenceEvapotranspiration() {}

  @Formula(
      id = "climate.atmospheric-pressure",
      symbol = "P",
      expression = "101.3 ((293 - 0.0065 z) / 293)^5.26",
      unit = "kPa",
      meaning = "Mean pressure of the air at a height.",
      source = "fao56",
      equation = "7")
  public static double atmosphericPressureKPa(
      @Argument(symbol = "z", unit = "m", min = -430, max = 6000) double elevationM) {
    return 101.3 * FastMath.pow((293 - 0.0065 * elevationM) / 293, 5.26);
  }

  @Formula(
      id = "climate.psychrometric-constant",
      symbol = "gamma",
      expression = "0.665e-3 P",
      unit = "kPa/K",
      meaning = "Psychrometric constant.",
      source = "fao56",
      equation = "8")
  public static double psychrometricConstantKPaK(
      @Argument(symbol = "P", unit = "kPa", min = 40, max = 110) double pressureKPa) {
    return 0.665e-3 * pressureKPa;
  }

  @Formula(
      id = "climate.saturation-vapour-pressure",
      symbol = "e0",
      expression = "0.6108 exp(17.27 T / (T + 237.3))",
      unit = "kPa",
      meaning = "Saturation vapour pressure over water.",
      source = "fao56",
      equation = "11")
  public static double saturationVapourPressureKPa(
      @Argument(symbol = "T", unit = "Cel", min = -80, max = 100) double temperatureC) {
    return 0.6108 * FastMath.exp(17.27 * temperatureC / (temperatureC + 237.3));
  }

  @Formula(
      id = "climate.vapour-pressure-slope",
      symbol = "Delta",
      expression = "4098 e0(T) / (T + 237.3)^2",
      unit = "kPa/K",
      meaning = "Slope of the saturation vapour pressure curve.",
      source = "fao56",
      equation = "13")
  public static double vapourPressureSlopeKPaK(
      @Argument(symbol = "T", unit = "Cel", min = -80, max = 100) double temperatureC) {
    double denominator = temperatureC + 237.3;
    return 4098 * saturationVapourPressureKPa(temperatureC) / (denominator * denominator);
  }

  @Formula(
      id = "climate.vapour-pressure-psychrometer",
      symbol = "e_a",
      expression = "e0(T_wet) - a P (T_dry - T_wet)",
      unit = "kPa",
      meaning = "Vapour pressure from wet and dry bulb.",
      source = "fao56",
      equation = "15")
  public static double vapourPressureOfPsychrometerKPa(
      @Argument(symbol = "T_dry", unit = "Cel", min = -40, max = 60) double dryC,
      @Argument(symbol = "T_wet", unit = "Cel", min = -40, max = 60) double wetC,
      @Argument(symbol = "a", unit = "/K", min = 0.0001, max = 0.002) double coefficient,
      @Argument(symbol = "P", unit = "kPa", min = 40, max = 110) double pressureKPa) {
    return saturationVapourPressureKPa(wetC) - coefficient * pressureKPa * (dryC - wetC);
  }

  @Formula(
      id = "climate.dew-point",
      symbol = "T_dew",
      expression = "237.3 ln(e_a / 0.6108) / (17.27 - ln(e_a / 0.6108))",
      unit = "Cel",
      meaning = "Temperature at which air of a vapour pressure is saturated.",
      source = "fao56",
      equation = "inverse of 14")
  public static double dewPointC(
      @Argument(symbol = "e_a", unit = "kPa", min = 0.0001, max = 20) double vapourPressureKPa) {
    double logarithm = FastMath.log(vapourPressureKPa / 0.6108);
    return 237.3 * logarithm / (17.27 - logarithm);
  }

  @Formula(
      id = "climate.wind-at-2-m",
      symbol = "u_2",
      expression = "u_z 4.87 / ln(67.8 z - 5.42)",
      unit = "m/s",
      meaning = "Wind at 2 m over short grass from wind at another height.",
      source = "fao56",
      equation = "47")
  public static double windAt2M(
      @Argument(symbol = "u_z", unit = "m/s", min = 0, max = 60) double wind,
      @Argument(symbol = "z", unit = "m", min = 0.5, max = 200) double heightM) {
    return wind * 4.87 / FastMath.log(67.8 * heightM - 5.42);
  }

  @Formula(
      id = "climate.net-short-wave",
      symbol = "R_ns",
      expression = "(1 - 0.23) R_s",
      unit = "MJ/(m2.d)",
      meaning = "Short-wave radiation kept by the reference crop.",
      source = "fao56",
      equation = "38")
  public static double netShortWaveMJM2Day(
      @Argument(symbol = "R_s", unit = "MJ/(m2.d)", min = 0, max = 60) double solar) {
    return (1 - 0.23) * solar;
  }

  @Formula(
      id = "climate.net-long-wave",
      symbol = "R_nl",
      expression =
          "sigma ((T_max,K^4 + T_min,K^4) / 2) (0.34 - 0.14 sqrt(e_a)) (1.35 R_s/R_so - 0.35)",
      unit = "MJ/(m2.d)",
      meaning = "Long-wave radiation lost by the reference crop.",
      source = "fao56",
      equation = "39")
  public static double netLongWaveMJM2Day(
      @Argument(symbol = "T_max", unit = "Cel", min = -80, max = 60) double maximumC,
      @Argument(symbol = "T_min", unit = "Cel", min = -80, max = 60) double minimumC,
      @Argument(symbol = "e_a", unit = "kPa", min = 0, max = 10) double vapourPressureKPa,
      @Argument(symbol = "R_s/R_so", unit = "1", min = 0, max = 1.5) double relativeShortWave) {
    double warm = maximumC + FAO_KELVIN;
    double cold = minimumC + FAO_KELVIN;
    return SIGMA_MJ
        * (warm * warm * warm * warm + cold * cold * cold * cold)
        / 2
        * (0.34 - 0.14 * Math.sqrt(vapourPressureKPa))
        * (1.35 * Math.min(1, relativeShortWave) - 0.35);
  }

  @Formula(
      id = "climate.monthly-soil-heat",
      symbol = "G",
      expression = "0.07 (T_next - T_previous)",
      unit = "MJ/(m2.d)",
      meaning = "Heat that goes into the soil in a month.",
      source = "fao56",
      equation = "43")
  public static double monthlySoilHeatMJM2Day(
      @Argument(symbol = "T_previous", unit = "Cel", min = -80, max = 60) double previousC,
      @Argument(symbol = "T_next", unit = "Cel", min = -80, max = 60) double nextC) {
    return 0.07 * (nextC - previousC);
  }

  @Formula(
      id = "climate.penman-monteith",
      symbol = "ET_0",
      expression =
          "(0.408 Delta (R_n - G) + gamma (900 / (T + 273)) u_2 (e_s - e_a))"
              + " / (Delta + gamma (1 + 0.34 u_2))",
      unit = "mm/d",
      meaning = "Evapotranspiration of well watered short grass.",
      source = "fao56",
      equation = "6")
  public static double penmanMonteithMmDay(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 50) double temperatureC,
      @Argument(symbol = "R_n", unit = "MJ/(m2.d)", min = -20, max = 60) double netRadiation,
      @Argument(symbol = "G", unit = "MJ/(m2.d)", min = -20, max = 20) double soilHeat,
      @Argument(symbol = "u_2", unit = "m/s", min = 0, max = 30) double windAt2M,
      @Argument(symbol = "e_s", unit = "kPa", min = 0, max = 20) double saturationKPa,
      @Argument(symbol = "e_a", unit = "kPa", min = 0, max = 20) double vapourPressureKPa,
      @Argument(symbol = "gamma", unit = "kPa/K", min = 0.02, max = 0.08)
          double psychrometricConstant) {
    double slope = vapourPressureSlopeKPaK(temperatureC);
    double advection =
        psychrometricConstant
            * 900
            / (temperatureC + 273)
            * windAt2M
            * (saturationKPa - vapourPressureKPa);
    return (0.408 * slope * (netRadiation - soilHeat) + advection)
        / (slope + psychrometricConstant * (1 + 0.34 * windAt2M));
  }

  @Formula(
      id = "climate.hargreaves",
      symbol = "ET_0",
      expression = "0.0023 (T_mean + 17.8) sqrt(T_max - T_min) 0.408 R_a",
      unit = "mm/d",
      meaning = "Evapotranspiration of short grass from temperatures alone.",
      source = "hargreaves-samani-1985",
      equation = "FAO-56 52")
  public static double hargreavesMmDay(
      @Argument(symbol = "T_mean", unit = "Cel", min = -17.8, max = 50) double meanC,
      @Argument(symbol = "T_max - T_min", unit = "K", min = 0, max = 40) double rangeK,
      @Argument(symbol = "R_a", unit = "MJ/(m2.d)", min = 0, max = 60) double extraterrestrial) {
    return 0.0023 * (meanC + 17.8) * Math.sqrt(rangeK) * 0.408 * extraterrestrial;
  }

  @Formula(
      id = "climate.hourly-reference-evapotranspiration",
      symbol = "ET_os",
      expression =
          "(0.408 Delta (R_n - G) + gamma (37 / (T + 273)) u_2 (e0(T) - e_a))"
              + " / (Delta + gamma (1 + C_d u_2))",
      unit = "mm/h",
      meaning = "Hourly evapotranspiration of the standardised short reference surface.",
      source = "asce-ewri-2005",
      equation = "1")
  public static double standardisedHourlyMm(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 60) double temperatureC,
      @Argument(symbol = "R_n", unit = "MJ/(m2.h)", min = -2, max = 5) double netRadiation,
      @Argument(symbol = "G", unit = "MJ/(m2.h)", min = -2, max = 2) double soilHeat,
      @Argument(symbol = "u_2", unit = "m/s", min = 0, max = 30) double windAt2M,
      @Argument(symbol = "e_a", unit = "kPa", min = 0, max = 20) double vapourPressureKPa,
      @Argument(symbol = "gamma", unit = "kPa/K", min = 0.02, max = 0.08)
          double psychrometricConstant,
      @Argument(symbol = "C_d", unit = "s/m", min = 0.1, max = 2) double denominatorConstant) {
    double slope = vapourPressureSlopeKPaK(temperatureC);
    double deficit = saturationVapourPressureKPa(temperatureC) - vapourPressureKPa;
    return (0.408 * slope * (netRadiation - soilHeat)
            + psychrometricConstant * 37 / (temperatureC + 273) * windAt2M * deficit)
        / (slope + psychrometricConstant * (1 + denominatorConstant * windAt2M));
  }
}
