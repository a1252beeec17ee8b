package org.marshlight.compost;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How long heat must last for hygiene, by public rule. */
public final class Sanitation {

  /** Twenty minutes in days, the shortest time that the rule allows. */
  private static final double TWENTY_MINUTES = 20.0 / (24 * 60);

  private Sanitation() {}

  /** Time at temperature for solids. */
  @Formula(
      id = "compost.heat-time-of-solids",
      symbol = "D",
      expression = "131 700 000 / 10^(0.1400 t)",
      unit = "d",
      meaning =
          "Days at a temperature of at least 50 Cel for biosolids of at least 7 percent solids;"
              + " never less than 20 minutes.",
      source = "cfr-503",
      equation = "503.32(a)(3), alternative 1")
  public static double daysOfSolids(
      @Argument(symbol = "t", unit = "Cel", min = 50, max = 100) double temperatureC) {
    return Math.max(TWENTY_MINUTES, 131_700_000 / FastMath.pow(10, 0.14 * temperatureC));
  }

  /** Time at temperature for liquids. */
  @Formula(
      id = "compost.heat-time-of-liquids",
      symbol = "D",
      expression = "50 070 000 / 10^(0.1400 t)",
      unit = "d",
      meaning =
          "Days at a temperature of at least 50 Cel for biosolids of less than 7 percent solids,"
              + " where that is 30 minutes or more.",
      source = "cfr-503",
      equation = "503.32(a)(3), alternative 1")
  public static double daysOfLiquids(
      @Argument(symbol = "t", unit = "Cel", min = 50, max = 67) double temperatureC) {
    return 50_070_000 / FastMath.pow(10, 0.14 * temperatureC);
  }
}
