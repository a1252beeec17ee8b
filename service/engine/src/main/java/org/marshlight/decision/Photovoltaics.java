package org.marshlight.decision;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** What a photovoltaic module makes of the sun on its plane in a year. */
public final class Photovoltaics {

  private Photovoltaics() {}

  /** Losses of a plant taken together. */
  @Formula(
      id = "decision.joint-loss",
      symbol = "L",
      expression = "1 - product of (1 - L_i)",
      unit = "1",
      meaning = "Share of a photovoltaic plant's output that eight losses take together.",
      source = "pv-loss-defaults",
      equation = "eight losses, one after the other")
  public static double jointLoss(
      @Argument(symbol = "L_1", unit = "1", min = 0, max = 1) double soiling,
      @Argument(symbol = "L_2", unit = "1", min = 0, max = 1) double shading,
      @Argument(symbol = "L_3", unit = "1", min = 0, max = 1) double mismatch,
      @Argument(symbol = "L_4", unit = "1", min = 0, max = 1) double wiring,
      @Argument(symbol = "L_5", unit = "1", min = 0, max = 1) double connections,
      @Argument(symbol = "L_6", unit = "1", min = 0, max = 1) double lightInduced,
      @Argument(symbol = "L_7", unit = "1", min = 0, max = 1) double nameplate,
      @Argument(symbol = "L_8", unit = "1", min = 0, max = 1) double availability) {
    return 1
        - (1 - soiling)
            * (1 - shading)
            * (1 - mismatch)
            * (1 - wiring)
            * (1 - connections)
            * (1 - lightInduced)
            * (1 - nameplate)
            * (1 - availability);
  }

  /** Electricity of a square metre of module. */
  @Formula(
      id = "decision.module-yield",
      symbol = "E",
      expression = "G eta_m (1 - L) eta_i",
      unit = "kW.h/m2",
      meaning = "Electricity of a square metre of module from the sun G on its plane.",
      source = "common-practice",
      equation = "efficiencies one after the other")
  public static double yieldKWhM2(
      @Argument(symbol = "G", unit = "kW.h/m2", min = 0, max = 4000) double sunKWhM2,
      @Argument(symbol = "eta_m", unit = "1", min = 0, max = 1) double moduleEfficiency,
      @Argument(symbol = "L", unit = "1", min = 0, max = 1) double loss,
      @Argument(symbol = "eta_i", unit = "1", min = 0, max = 1) double inverterEfficiency) {
    return sunKWhM2 * moduleEfficiency * (1 - loss) * inverterEfficiency;
  }
}
