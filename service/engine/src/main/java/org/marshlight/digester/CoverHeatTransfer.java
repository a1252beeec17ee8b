package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Heat across air gaps, to wind and sky, and between liquor and lid. Temperatures in kelvin. */
public final class CoverHeatTransfer {

  /** Stefan-Boltzmann constant, W/(m2.K4) (CODATA). */
  public static final double SIGMA = 5.670_374e-8;

  /** Acceleration of free fall, m/s2 (standard). */
  private static final double GRAVITY = 9.806_65;

  private static final double ICE_POINT_K = 273.15;

  private static final double PER_1708 = 1.0 / 1708;
  private static final double PER_5830 = 1.0 / 5830;

  private CoverHeatTransfer() {}

  /** Rayleigh number of an air gap, with properties of air at the mean temperature. */
  @Formula(
      id = "digester.rayleigh-number",
      symbol = "Ra",
      expression =
          "g |T_1 - T_2| L^3 / (T_m nu alpha); nu = 1.33e-5 (T_m/273.15)^1.75,"
              + " alpha = 1.90e-5 (T_m/273.15)^1.76",
      unit = "1",
      meaning = "Rayleigh number of an air gap.",
      source = "duffie-beckman",
      equation = "3.11.1")
  public static double rayleighNumber(
      @Argument(symbol = "T_1", unit = "K", min = 150, max = 500) double hotK,
      @Argument(symbol = "T_2", unit = "K", min = 150, max = 500) double coldK,
      @Argument(symbol = "L", unit = "m", min = 0.001, max = 5) double gapM) {
    double mean = (hotK + coldK) / 2;
    double ratio = mean / ICE_POINT_K;
    double viscosity = 1.33e-5 * FastMath.pow(ratio, 1.75);
    double diffusivity = 1.90e-5 * FastMath.pow(ratio, 1.76);
    return GRAVITY * Math.abs(hotK - coldK) * gapM * gapM * gapM / (mean * viscosity * diffusivity);
  }

  /** Nusselt number of an air gap heated from below; tilts of 0 to 75 deg. */
  @Formula(
      id = "digester.hollands-nusselt",
      symbol = "Nu",
      expression =
          "1 + 1.44 [1 - 1708 sin^1.6(1.8 b) / (Ra cos b)] [1 - 1708 / (Ra cos b)]+"
              + " + [(Ra cos b / 5830)^(1/3) - 1]+",
      unit = "1",
      meaning = "Nusselt number of an air gap heated from below.",
      source = "hollands-1976")
  public static double hollandsNusselt(
      @Argument(symbol = "Ra", unit = "1", min = 0, max = 1e10) double rayleigh,
      @Argument(symbol = "b", unit = "rad", min = 0, max = 1.31) double tiltRad) {
    return hollands(rayleigh * FastMath.cos(tiltRad), hollandsTiltTerm(tiltRad));
  }

  /** The part of Hollands' correlation that hangs on the tilt alone: sin^1.6(1.8 b). */
  static double hollandsTiltTerm(double tiltRad) {
    return FastMath.pow(FastMath.sin(1.8 * tiltRad), 1.6);
  }

  /** Hollands' correlation with the tilt worked in: {@code Ra cos b} and {@code sin^1.6(1.8 b)}. */
  static double hollands(double rayleighCosTilt, double tiltTerm) {
    if (rayleighCosTilt <= 1708) {
      return 1;
    }
    double critical = 1708 / rayleighCosTilt;
    double start = 1 - critical;
    double tilted = tiltTerm < rayleighCosTilt * PER_1708 ? 1 - tiltTerm * critical : 0;
    double strong = rayleighCosTilt > 5830 ? CubeRoot.of(rayleighCosTilt * PER_5830) - 1 : 0;
    return 1 + 1.44 * tilted * start + strong;
  }

  /** Conductivity of air. */
  @Formula(
      id = "digester.air-conductivity",
      symbol = "k_a",
      expression = "0.0242 (T / 273.15)^0.9",
      unit = "W/(m.K)",
      meaning = "Thermal conductivity of air.",
      source = "duffie-beckman",
      equation = "appendix E, fitted")
  public static double airConductivityWMK(
      @Argument(symbol = "T", unit = "K", min = 200, max = 500) double temperatureK) {
    return 0.0242 * FastMath.pow(temperatureK / ICE_POINT_K, 0.9);
  }

  /** Long-wave exchange of two parallel planes. */
  @Formula(
      id = "digester.radiation-coefficient",
      symbol = "h_r",
      expression = "sigma (T_1^2 + T_2^2) (T_1 + T_2) / (1/eps_1 + 1/eps_2 - 1)",
      unit = "W/(m2.K)",
      meaning = "Long-wave exchange of two parallel planes for each kelvin between them.",
      source = "duffie-beckman",
      equation = "3.10.1")
  public static double radiationCoefficient(
      @Argument(symbol = "T_1", unit = "K", min = 100, max = 600) double firstK,
      @Argument(symbol = "T_2", unit = "K", min = 100, max = 600) double secondK,
      @Argument(symbol = "eps_1", unit = "1", min = 0.01, max = 1) double firstEmittance,
      @Argument(symbol = "eps_2", unit = "1", min = 0.01, max = 1) double secondEmittance) {
    return longWave(firstK, secondK, emittanceFactor(firstEmittance, secondEmittance));
  }

  /** The part of the long-wave exchange that hangs on the surfaces alone: sigma over their sum. */
  static double emittanceFactor(double firstEmittance, double secondEmittance) {
    return SIGMA / (1 / firstEmittance + 1 / secondEmittance - 1);
  }

  /** The long-wave exchange with the surfaces' part worked in. */
  static double longWave(double firstK, double secondK, double emittanceFactor) {
    return emittanceFactor * (firstK * firstK + secondK * secondK) * (firstK + secondK);
  }

  /** Loss of an outer surface to the wind. */
  @Formula(
      id = "digester.wind-coefficient",
      symbol = "h_w",
      expression = "2.8 + 3.0 V",
      unit = "W/(m2.K)",
      meaning = "Heat that a flat surface gives to the wind for each kelvin.",
      source = "watmuff-1977")
  public static double windCoefficient(
      @Argument(symbol = "V", unit = "m/s", min = 0, max = 30) double windMS) {
    return 2.8 + 3.0 * windMS;
  }

  /** Convection from warm liquor to a cooler lid. */
  @Formula(
      id = "digester.dunkle-convection",
      symbol = "h_c",
      expression = "0.884 ((T_w - T_g) + (p_w - p_g) T_w / (268900 - p_w))^(1/3); pressures in Pa",
      unit = "W/(m2.K)",
      meaning = "Convection from warm water to a cooler cover over it.",
      source = "dunkle-1961")
  public static double dunkleConvection(
      @Argument(symbol = "T_w", unit = "K", min = 250, max = 373) double waterK,
      @Argument(symbol = "T_g", unit = "K", min = 200, max = 373) double coverK,
      @Argument(symbol = "p_w", unit = "Pa", min = 0, max = 101000) double waterPa,
      @Argument(symbol = "p_g", unit = "Pa", min = 0, max = 101000) double coverPa) {
    double drive = waterK - coverK + (waterPa - coverPa) * waterK / (268_900 - waterPa);
    return drive > CubeRoot.LEAST ? 0.884 * CubeRoot.of(drive) : 0;
  }

  /** Heat that vapour carries from warm liquor to a cooler lid. */
  @Formula(
      id = "digester.dunkle-evaporation",
      symbol = "q_e",
      expression = "0.016273 h_c (p_w - p_g)",
      unit = "W/m2",
      meaning = "Heat that evaporation and condensation carry from water to a cooler cover.",
      source = "dunkle-1961")
  public static double dunkleEvaporationWM2(
      @Argument(symbol = "h_c", unit = "W/(m2.K)", min = 0, max = 50) double convection,
      @Argument(symbol = "p_w", unit = "Pa", min = 0, max = 101000) double waterPa,
      @Argument(symbol = "p_g", unit = "Pa", min = 0, max = 101000) double coverPa) {
    return 0.016273 * convection * (waterPa - coverPa);
  }
}
