package org.marshlight.ethanol;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Heat that mash and still take. */
public final class DistillingHeat {

  private static final double MJ_PER_KWH = 3.6;
  private static final double KJ_PER_KWH = 3600;

  private DistillingHeat() {}

  /** Heat that warms a mass. */
  @Formula(
      id = "ethanol.sensible-heat",
      symbol = "Q",
      expression = "m c (t2 - t1) / 3600",
      unit = "kW.h",
      meaning = "Heat that warms a mass from one temperature to another.",
      source = "common-practice")
  public static double sensibleKWh(
      @Argument(symbol = "m", unit = "kg", min = 0, max = 1e9) double massKg,
      @Argument(symbol = "c", unit = "kJ/(kg.K)", min = 0, max = 10) double heatCapacityKJKgK,
      @Argument(symbol = "t1", unit = "Cel", min = -50, max = 200) double fromC,
      @Argument(symbol = "t2", unit = "Cel", min = -50, max = 200) double toC) {
    return massKg * heatCapacityKJKgK * (toC - fromC) / KJ_PER_KWH;
  }

  /** Heat that evaporates a distillate. */
  @Formula(
      id = "ethanol.latent-heat",
      symbol = "Q",
      expression = "(E l_E / M_E + W l_W / M_W) / 3.6",
      unit = "kW.h",
      meaning = "Heat that evaporates ethanol and water.",
      source = "common-practice")
  public static double latentKWh(
      @Argument(symbol = "E", unit = "kg", min = 0, max = 1e9) double ethanolKg,
      @Argument(symbol = "W", unit = "kg", min = 0, max = 1e9) double waterKg,
      @Argument(symbol = "l_E", unit = "kJ/mol", min = 10, max = 100) double latentEthanolKJMol,
      @Argument(symbol = "l_W", unit = "kJ/mol", min = 10, max = 100) double latentWaterKJMol) {
    return (ethanolKg * latentEthanolKJMol / Alcoholometry.ETHANOL
            + waterKg * latentWaterKJMol / Alcoholometry.WATER)
        / MJ_PER_KWH;
  }

  /** Heat that a column's reboiler gives. */
  @Formula(
      id = "ethanol.boil-up-heat",
      symbol = "Q",
      expression = "D (R + 1) l / 3.6",
      unit = "kW.h",
      meaning =
          "Heat of the vapour that rises in a column fed with boiling liquid: distillate and"
              + " reflux.",
      source = "mccabe-thiele-1925",
      equation = "constant molar overflow")
  public static double boilUpKWh(
      @Argument(symbol = "D", unit = "kmol", min = 0, max = 1e9) double distillateKmol,
      @Argument(symbol = "R", unit = "1", min = 0, max = 10000) double refluxRatio,
      @Argument(symbol = "l", unit = "kJ/mol", min = 10, max = 100) double latentKJMol) {
    return distillateKmol * (refluxRatio + 1) * latentKJMol / MJ_PER_KWH;
  }
}
