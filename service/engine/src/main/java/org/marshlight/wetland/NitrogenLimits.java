package org.marshlight.wetland;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.Stoichiometry;

/** What oxygen and organic matter allow of nitrogen's way from ammonium to gas. */
public final class NitrogenLimits {

  private NitrogenLimits() {}

  @Formula(
      id = "wetland.nitrification-limit",
      symbol = "N_max",
      expression = "o A t / (1000 * 4.57)",
      unit = "kg",
      meaning = "Ammonium nitrogen that the oxygen which reaches a bed can turn to nitrate.",
      source = "stoichiometry")
  public static double nitrificationKg(
      @Argument(symbol = "o", unit = "g/(m2.d)", min = 0, max = 1000) double oxygenGM2Day,
      @Argument(symbol = "A", unit = "m2", min = 0, max = 1e9) double areaM2,
      @Argument(symbol = "t", unit = "d", min = 0, max = 366) double days) {
    return oxygenGM2Day * areaM2 * days / (1000 * Stoichiometry.NITRIFICATION_OXYGEN);
  }

  @Formula(
      id = "wetland.denitrification-limit",
      symbol = "N_max",
      expression = "f COD / 2.86",
      unit = "kg",
      meaning = "Nitrate nitrogen that organic matter taken apart in a bed can reduce to gas.",
      source = "stoichiometry")
  public static double denitrificationKg(
      @Argument(symbol = "COD", unit = "kg", min = 0, max = 1e12) double decayedCodKg,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1) double share) {
    return share * decayedCodKg / Stoichiometry.DENITRIFICATION_COD;
  }
}
