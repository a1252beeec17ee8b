package org.marshlight.crop;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Terms of a stand's daily growth. Days count from 1 January, or from 2 July in the south. */
public final class GrowthTerms {

  private GrowthTerms() {}

  @Formula(
      id = "crop.canopy",
      symbol = "f_i",
      expression = "f_max (1 - exp(-GDD / g_c))",
      unit = "1",
      meaning = "Share of light that leaves catch after a sum of degree-days.",
      source = "monteith-1977",
      equation = "light interception; the course with degree-days is this project's")
  public static double canopy(
      @Argument(symbol = "f_max", unit = "1", min = 0, max = 1) double greatest,
      @Argument(symbol = "GDD", unit = "K.d", min = 0, max = 20000) double degreeDays,
      @Argument(symbol = "g_c", unit = "K.d", min = 1, max = 5000) double canopyDegreeDays) {
    return greatest * (1 - FastMath.exp(-degreeDays / canopyDegreeDays));
  }

  @Formula(
      id = "crop.photoperiod-factor",
      symbol = "s",
      expression = "clamp((N - N_0) / dN, 0, 1)",
      unit = "1",
      meaning = "Share of leaf that is left as days shorten after midsummer.",
      source = "house-choice")
  public static double photoperiodFactor(
      @Argument(symbol = "N", unit = "h", min = 0, max = 24) double daylightH,
      @Argument(symbol = "N_0", unit = "h", min = 0, max = 24) double endH,
      @Argument(symbol = "dN", unit = "h", min = 0.01, max = 24) double spanH) {
    return Math.max(0, Math.min(1, (daylightH - endH) / spanH));
  }

  @Formula(
      id = "crop.temperature-factor",
      symbol = "f_T",
      expression = "clamp((T - T_b) / (T_o - T_b), 0, 1) clamp((T_m - T) / (T_m - T_c), 0, 1)",
      unit = "1",
      meaning = "Share of growth that temperature allows.",
      source = "adriano-1980",
      equation = "straight lines; the corner points are fitted")
  public static double temperatureFactor(
      @Argument(symbol = "T", unit = "Cel", min = -80, max = 60) double temperatureC,
      @Argument(symbol = "T_b", unit = "Cel", min = -10, max = 25) double baseC,
      @Argument(symbol = "T_o", unit = "Cel", min = -9, max = 45) double optimumC,
      @Argument(symbol = "T_c", unit = "Cel", min = 10, max = 59) double declineC,
      @Argument(symbol = "T_m", unit = "Cel", min = 11, max = 60) double limitC) {
    double warm = Math.max(0, Math.min(1, (temperatureC - baseC) / (optimumC - baseC)));
    double hot = Math.max(0, Math.min(1, (limitC - temperatureC) / (limitC - declineC)));
    return warm * hot;
  }

  @Formula(
      id = "crop.potential-growth",
      symbol = "g",
      expression = "RUE f_PAR R_s tau f_i s f_T",
      unit = "g/(m2.d)",
      meaning = "New dry matter of tops and underground organs on a day, nothing lacking.",
      source = "monteith-1977")
  public static double potentialGrowthGM2Day(
      @Argument(symbol = "RUE", unit = "g/MJ", min = 0, max = 10) double radiationUse,
      @Argument(symbol = "f_PAR", unit = "1", min = 0, max = 1) double parShare,
      @Argument(symbol = "R_s", unit = "MJ/(m2.d)", min = 0, max = 60) double solar,
      @Argument(symbol = "tau", unit = "1", min = 0, max = 1) double coverLight,
      @Argument(symbol = "f_i s", unit = "1", min = 0, max = 1) double canopy,
      @Argument(symbol = "f_T", unit = "1", min = 0, max = 1) double temperatureFactor) {
    return radiationUse * parShare * solar * coverLight * canopy * temperatureFactor;
  }

  @Formula(
      id = "crop.scarcity",
      symbol = "phi",
      expression = "min(1, S / D)",
      unit = "1",
      meaning = "Share of growth that the supply of one nutrient allows.",
      source = "liebig")
  public static double scarcity(
      @Argument(symbol = "S", unit = "kg", min = 0, max = 1e9) double supplyKg,
      @Argument(symbol = "D", unit = "kg", min = 0, max = 1e9) double demandKg) {
    return supplyKg >= demandKg ? 1 : supplyKg / demandKg;
  }

  @Formula(
      id = "crop.organ-share",
      symbol = "a",
      expression = "a_0 + (a_1 - a_0) clamp((n - n_0) / dn, 0, 1)",
      unit = "1",
      meaning = "Share of new matter that goes below ground on a day.",
      source = "sale-orr-1987",
      equation = "short days and cold favour storage; the line is this project's")
  public static double organShare(
      @Argument(symbol = "a_0", unit = "1", min = 0, max = 1) double early,
      @Argument(symbol = "a_1", unit = "1", min = 0, max = 1) double late,
      @Argument(symbol = "n", unit = "d", min = 1, max = 366) double day,
      @Argument(symbol = "n_0", unit = "d", min = 1, max = 366) double fromDay,
      @Argument(symbol = "dn", unit = "d", min = 1, max = 366) double spanDays) {
    return early + (late - early) * Math.max(0, Math.min(1, (day - fromDay) / spanDays));
  }

  @Formula(
      id = "crop.storage-loss-rate",
      symbol = "l",
      expression = "(l_y / 365) w Q^((max(T, 0) - 20) / 10)",
      unit = "/d",
      meaning = "Share of underground matter that is lost on a day.",
      source = "hill-1987",
      equation = "yearly turnover; its course with warmth is this project's")
  public static double storageLossRate(
      @Argument(symbol = "l_y", unit = "/a", min = 0, max = 10) double yearlyLoss,
      @Argument(symbol = "w", unit = "1", min = 0, max = 10) double warmFactor,
      @Argument(symbol = "Q", unit = "1", min = 1, max = 5) double q10,
      @Argument(symbol = "T", unit = "Cel", min = -80, max = 60) double temperatureC) {
    double tenKelvins = (Math.max(0, temperatureC) - 20) / 10;
    return yearlyLoss / 365 * warmFactor * FastMath.exp(FastMath.log(q10) * tenKelvins);
  }

  @Formula(
      id = "crop.regrowth-vigour",
      symbol = "v",
      expression = "min(1, S / S_full)^m",
      unit = "1",
      meaning = "Share of full leaf that the reserves left in the ground can raise in spring.",
      source = "house-choice")
  public static double regrowthVigour(
      @Argument(symbol = "S", unit = "kg/m2", min = 0, max = 100) double reserve,
      @Argument(symbol = "S_full", unit = "kg/m2", min = 0.0001, max = 100) double fullReserve,
      @Argument(symbol = "m", unit = "1", min = 0.01, max = 1) double exponent) {
    return reserve >= fullReserve ? 1 : FastMath.pow(reserve / fullReserve, exponent);
  }

  /** Reserves run down while shoots grow and fill again in late summer. */
  @Formula(
      id = "crop.starch-course",
      symbol = "c",
      expression =
          "1 - (1 - c_min) r; r rises from 0 on n_1 to 1 on n_2 and falls back to 0 on n_3",
      unit = "1",
      meaning = "Starch in storage organs on a day over that of autumn.",
      source = "carex-reserves",
      equation = "straight lines through the seasons of a sedge")
  public static double starchCourse(
      @Argument(symbol = "n", unit = "d", min = 1, max = 366) double day,
      @Argument(symbol = "n_1", unit = "d", min = 1, max = 364) double springDay,
      @Argument(symbol = "n_2", unit = "d", min = 2, max = 365) double lowestDay,
      @Argument(symbol = "n_3", unit = "d", min = 3, max = 366) double fullDay,
      @Argument(symbol = "c_min", unit = "1", min = 0, max = 1) double lowest) {
    double falling = (day - springDay) / (lowestDay - springDay);
    double rising = (fullDay - day) / (fullDay - lowestDay);
    return 1 - (1 - lowest) * Math.max(0, Math.min(falling, rising));
  }

  @Formula(
      id = "crop.content",
      symbol = "m",
      expression = "B x",
      unit = "g/m2",
      meaning = "Mass of a substance in plant matter that holds a share of it.",
      source = "stoichiometry")
  public static double contentGM2(
      @Argument(symbol = "B", unit = "g/m2", min = 0, max = 1e6) double matterGM2,
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double share) {
    return matterGM2 * share;
  }
}
