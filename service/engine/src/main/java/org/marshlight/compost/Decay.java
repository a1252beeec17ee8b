package org.marshlight.compost;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How much of a heap decays, and what becomes of its nitrogen. */
public final class Decay {

  private static final double MOST_LOST = 0.9;

  private Decay() {}

  /** How far dryness holds decay back. */
  @Formula(
      id = "compost.moisture-factor",
      symbol = "f_M",
      expression = "(M - M_0) / (M_1 - M_0), between 0 and 1",
      unit = "1",
      meaning = "Share of decay that moisture allows.",
      source = "richard-trautmann-1996",
      equation = "advice on moisture, made a straight line")
  public static double moistureFactor(
      @Argument(symbol = "M", unit = "1", min = 0, max = 1) double moisture,
      @Argument(symbol = "M_0", unit = "1", min = 0, max = 0.6) double stopsAt,
      @Argument(symbol = "M_1", unit = "1", min = 0.01, max = 0.9) double freeFrom) {
    return Math.min(1, Math.max(0, (moisture - stopsAt) / (freeFrom - stopsAt)));
  }

  /** How far lack of air holds decay back. */
  @Formula(
      id = "compost.air-factor",
      symbol = "f_A",
      expression = "FAS / FAS_1, between f_0 and 1",
      unit = "1",
      meaning = "Share of decay that the air between the pieces allows.",
      source = "common-practice")
  public static double airFactor(
      @Argument(symbol = "FAS", unit = "1", min = 0, max = 1) double freeAirSpace,
      @Argument(symbol = "FAS_1", unit = "1", min = 0.01, max = 1) double enough,
      @Argument(symbol = "f_0", unit = "1", min = 0, max = 1) double withoutAir) {
    return Math.min(1, Math.max(withoutAir, freeAirSpace / enough));
  }

  /** How far want of nitrogen holds decay back. */
  @Formula(
      id = "compost.nitrogen-factor",
      symbol = "f_N",
      expression = "R_1 / R, at most 1",
      unit = "1",
      meaning = "Share of decay that the nitrogen of the mix allows.",
      source = "common-practice")
  public static double nitrogenFactor(
      @Argument(symbol = "R", unit = "kg/kg", min = 0.1, max = 1e9) double carbonToNitrogen,
      @Argument(symbol = "R_1", unit = "kg/kg", min = 1, max = 200) double greatestFree) {
    return Math.min(1, greatestFree / carbonToNitrogen);
  }

  /** Nitrogen lost as ammonia. */
  @Formula(
      id = "compost.nitrogen-loss",
      symbol = "l_N",
      expression = "l_p + (l_r - l_p) (R_p - R) / (R_p - R_r), at least l_p and at most 0.9",
      unit = "1",
      meaning =
          "Share of the nitrogen lost as ammonia: more from a mix that is richer in nitrogen.",
      source = "eghball-1997",
      equation = "range of measured losses, made a straight line")
  public static double nitrogenLoss(
      @Argument(symbol = "R", unit = "kg/kg", min = 0, max = 1e9) double carbonToNitrogen,
      @Argument(symbol = "R_r", unit = "kg/kg", min = 1, max = 25) double richRatio,
      @Argument(symbol = "l_r", unit = "1", min = 0, max = 0.9) double richLoss,
      @Argument(symbol = "R_p", unit = "kg/kg", min = 25.5, max = 60) double poorRatio,
      @Argument(symbol = "l_p", unit = "1", min = 0, max = 0.9) double poorLoss) {
    double loss =
        poorLoss + (richLoss - poorLoss) * (poorRatio - carbonToNitrogen) / (poorRatio - richRatio);
    return Math.min(MOST_LOST, Math.max(poorLoss, loss));
  }

  /** Carbon to nitrogen of the finished compost. */
  @Formula(
      id = "compost.finished-carbon-to-nitrogen",
      symbol = "R_1",
      expression = "R_0 (1 - l_C) / (1 - l_N)",
      unit = "kg/kg",
      meaning = "Carbon to nitrogen after shares of both are lost.",
      source = "common-practice")
  public static double finishedCarbonToNitrogen(
      @Argument(symbol = "R_0", unit = "kg/kg", min = 0, max = 1e9) double carbonToNitrogen,
      @Argument(symbol = "l_C", unit = "1", min = 0, max = 1) double carbonLoss,
      @Argument(symbol = "l_N", unit = "1", min = 0, max = 0.999) double nitrogenLoss) {
    return carbonToNitrogen * (1 - carbonLoss) / (1 - nitrogenLoss);
  }
}
