package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Removal along a bed seen as a row of mixed tanks that fades to a background: P-k-C*. */
public final class TanksInSeries {

  /** The published classes of inflow strength span a factor of ten. */
  private static final double WEAKEST_CLASS = 10;

  private TanksInSeries() {}

  @Formula(
      id = "wetland.hydraulic-loading",
      symbol = "q",
      expression = "365 Q / A",
      unit = "m/a",
      meaning = "Depth of water that a bed receives in a year.",
      source = "kadlec-wallace-2009")
  public static double hydraulicLoadingMYear(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "A", unit = "m2", min = 0.001, max = 1e9) double areaM2) {
    return 365 * flowM3Day / areaM2;
  }

  @Formula(
      id = "wetland.areal-load",
      symbol = "L",
      expression = "q C",
      unit = "g/(m2.a)",
      meaning = "Mass that a square metre receives in a year.",
      source = "kadlec-wallace-2009")
  public static double arealLoadGM2Year(
      @Argument(symbol = "q", unit = "m/a", min = 0, max = 1e9) double loadingMYear,
      @Argument(symbol = "C", unit = "g/m3", min = 0, max = 1e9) double concentrationGM3) {
    return loadingMYear * concentrationGM3;
  }

  @Formula(
      id = "wetland.rate-at-temperature",
      symbol = "k",
      expression = "k_20 theta^(T - 20)",
      unit = "1",
      meaning = "Rate at a temperature, in the unit of the rate at 20 Cel.",
      source = "kadlec-wallace-2009")
  public static double rateAtTemperature(
      @Argument(symbol = "k_20", unit = "1", min = 0, max = 1e6) double rateAt20,
      @Argument(symbol = "theta", unit = "1", min = 0.5, max = 2) double theta,
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 120) double temperatureC) {
    return rateAt20 * FastMath.exp(FastMath.log(theta) * (temperatureC - 20));
  }

  /** The published rates by class of strength, made one curve: weak water is cleaned faster. */
  @Formula(
      id = "wetland.rate-at-strength",
      symbol = "k(C_i)",
      expression = "k clamp(C_ref / C_i, 1, 10)^m",
      unit = "m/a",
      meaning = "Areal rate for an inflow of a strength; never below that of the reference.",
      source = "kadlec-wallace-2009",
      equation = "curve through the medians by class of inflow")
  public static double rateAtStrengthMYear(
      @Argument(symbol = "k", unit = "m/a", min = 0, max = 1e6) double rateMYear,
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e12) double inflowMgL,
      @Argument(symbol = "C_ref", unit = "mg/L", min = 0.001, max = 1e6) double referenceMgL,
      @Argument(symbol = "m", unit = "1", min = 0, max = 1) double exponent) {
    double strength = Math.max(inflowMgL, referenceMgL / WEAKEST_CLASS);
    double ratio = Math.max(1, referenceMgL / strength);
    return ratio == 1 || exponent == 0 ? rateMYear : rateMYear * FastMath.pow(ratio, exponent);
  }

  /** What a bed cannot get below; never more than the inflow, so that nothing is created. */
  @Formula(
      id = "wetland.background",
      symbol = "C*",
      expression = "min(C_i, C_max, a + b C_i)",
      unit = "mg/L",
      meaning = "Concentration that removal fades to.",
      source = "kadlec-knight-1996")
  public static double backgroundMgL(
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e12) double inflowMgL,
      @Argument(symbol = "a", unit = "mg/L", min = 0, max = 1e6) double intercept,
      @Argument(symbol = "b", unit = "1", min = 0, max = 1) double slope,
      @Argument(symbol = "C_max", unit = "mg/L", min = 0, max = 1e12) double most) {
    return Math.min(inflowMgL, Math.min(most, intercept + slope * inflowMgL));
  }

  @Formula(
      id = "wetland.pkc-outflow",
      symbol = "C_e",
      expression = "C* + (C_i - C*) (1 + k / (P q))^(-P)",
      unit = "mg/L",
      meaning = "Outflow concentration at unchanged volume of water.",
      source = "kadlec-wallace-2009")
  public static double outflowMgL(
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e12) double inflowMgL,
      @Argument(symbol = "C*", unit = "mg/L", min = 0, max = 1e12) double backgroundMgL,
      @Argument(symbol = "k", unit = "m/a", min = 0, max = 1e9) double rateMYear,
      @Argument(symbol = "P", unit = "1", min = 0.1, max = 100) double tanks,
      @Argument(symbol = "q", unit = "m/a", min = 0, max = 1e9) double loadingMYear) {
    return backgroundMgL + (inflowMgL - backgroundMgL) * remaining(rateMYear, tanks, loadingMYear);
  }

  /** Share of what is above the background that a row of tanks lets through. */
  static double remaining(double rateMYear, double tanks, double loadingMYear) {
    if (rateMYear <= 0) {
      return 1;
    }
    double through = tanks * loadingMYear;
    return FastMath.pow(through / (through + rateMYear), tanks);
  }

  @Formula(
      id = "wetland.first-order-area",
      symbol = "A",
      expression = "365 (Q / k) ln((C_i - C*) / (C_e - C*))",
      unit = "m2",
      meaning = "Area that a plug-flow bed needs for an outflow concentration.",
      source = "k-c-star-area")
  public static double firstOrderAreaM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "k", unit = "m/a", min = 0.001, max = 1e6) double rateMYear,
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e9) double inflowMgL,
      @Argument(symbol = "C_e", unit = "mg/L", min = 0, max = 1e9) double outflowMgL,
      @Argument(symbol = "C*", unit = "mg/L", min = 0, max = 1e9) double backgroundMgL) {
    return 365
        * flowM3Day
        / rateMYear
        * FastMath.log((inflowMgL - backgroundMgL) / (outflowMgL - backgroundMgL));
  }

  /** Sorption sites fill within years; what then goes on is burial. */
  @Formula(
      id = "wetland.phosphorus-rate-at-age",
      symbol = "k(y)",
      expression = "k_old + (k_young - k_old) exp(-(y - 1) / tau)",
      unit = "m/a",
      meaning = "Areal rate of phosphorus removal in a year of a bed's life.",
      source = "house-choice")
  public static double phosphorusRateAtAgeMYear(
      @Argument(symbol = "k_young", unit = "m/a", min = 0, max = 1e4) double young,
      @Argument(symbol = "k_old", unit = "m/a", min = 0, max = 1e4) double old,
      @Argument(symbol = "tau", unit = "a", min = 0.1, max = 1000) double ageingYears,
      @Argument(symbol = "y", unit = "a", min = 1, max = 200) double yearOfLife) {
    return old + (young - old) * FastMath.exp(-(yearOfLife - 1) / ageingYears);
  }

  /** Cold slows plants and the makers and takers of nitrate beyond what theta says. */
  @Formula(
      id = "wetland.cold-factor",
      symbol = "f_cold",
      expression = "f + (1 - f) clamp((T - T_from) / (T_to - T_from), 0, 1)",
      unit = "1",
      meaning = "Share of the nitrogen rates that is left in cold water.",
      source = "natural-treatment-planning")
  public static double coldFactor(
      @Argument(symbol = "T", unit = "Cel", min = -60, max = 120) double temperatureC,
      @Argument(symbol = "T_from", unit = "Cel", min = -10, max = 20) double fromC,
      @Argument(symbol = "T_to", unit = "Cel", min = -9, max = 30) double toC,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1) double floor) {
    double warmth = Math.max(0, Math.min(1, (temperatureC - fromC) / (toC - fromC)));
    return floor + (1 - floor) * warmth;
  }

  /** Measured single-home beds do far worse for germs than the kinetics of large ones. */
  @Formula(
      id = "wetland.capped-coliforms",
      symbol = "N_e",
      expression = "max(N, N_i 10^(-R))",
      unit = "{CFU}/dL",
      meaning = "Coliforms in the outflow when removal is capped at R powers of ten.",
      source = "aseltyne-2002")
  public static double cappedColiforms(
      @Argument(symbol = "N", unit = "{CFU}/dL", min = 0, max = 1e15) double kineticPer100ML,
      @Argument(symbol = "N_i", unit = "{CFU}/dL", min = 0, max = 1e15) double inflowPer100ML,
      @Argument(symbol = "R", unit = "1", min = 0, max = 12) double logRemoval) {
    return Math.max(kineticPer100ML, inflowPer100ML * FastMath.pow(10, -logRemoval));
  }
}
