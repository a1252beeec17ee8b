package org.marshlight.safety;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Heat on skin, time against germs, and alcohol by the measure of the law. */
public final class Exposure {

  /** Temperatures, Cel, and times to a third-degree burn of an adult, s. */
  private static final double[] SCALD_C = {48.9, 54.4, 60.0, 65.6};

  private static final double[] SCALD_S = {300, 30, 6, 2};

  /** Litres of a United States gallon; a proof gallon holds half of it as alcohol. */
  private static final double LITRES_PER_GALLON = 3.785_411_784;

  private Exposure() {}

  /** Time in hot water until an adult is burned to the third degree. */
  @Formula(
      id = "safety.scald-time",
      symbol = "t",
      expression =
          "through 300 s at 48.9, 30 s at 54.4, 6 s at 60 and 2 s at 65.6 Cel, its logarithm linear between",
      unit = "s",
      meaning =
          "Time in hot water until an adult is burned to the third degree; children burn faster.",
      source = "cpsc-scald",
      equation = "figures of the commission, joined")
  public static double scaldSeconds(
      @Argument(symbol = "T", unit = "Cel", min = 45, max = 100) double temperatureC) {
    int piece = 0;
    while (piece < SCALD_C.length - 2 && temperatureC > SCALD_C[piece + 1]) {
      piece++;
    }
    double place = (temperatureC - SCALD_C[piece]) / (SCALD_C[piece + 1] - SCALD_C[piece]);
    return SCALD_S[piece] * FastMath.pow(SCALD_S[piece + 1] / SCALD_S[piece], place);
  }

  /** Days in a tank without air that a rule asks for. */
  @Formula(
      id = "safety.digestion-days",
      symbol = "D",
      expression = "60 - 3 (t - 20), from 60 d at 20 to 15 d at 35 Cel and above",
      unit = "d",
      meaning =
          "Mean stay in a tank without air that the rule for significant reduction of germs asks"
              + " for; it says nothing below 20 Cel.",
      source = "cfr-503",
      equation = "257 appendix II, linear between its ends")
  public static double digestionDays(
      @Argument(symbol = "t", unit = "Cel", min = 20, max = 55) double temperatureC) {
    return Math.max(15, 60 - 3 * (temperatureC - 20));
  }

  /** Alcohol by the measure of the United States law on fuel alcohol. */
  @Formula(
      id = "safety.proof-gallons",
      symbol = "G",
      expression = "V / (0.5 x 3.785411784)",
      unit = "1",
      meaning = "Proof gallons of a volume of pure ethanol: gallons at 50 percent by volume.",
      source = "cfr-19",
      equation = "definition of the proof gallon")
  public static double proofGallons(
      @Argument(symbol = "V", unit = "L", min = 0, max = 1e9) double ethanolL) {
    return ethanolL / (LITRES_PER_GALLON / 2);
  }
}
