package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Public rules for the size of a septic tank and the sludge that gathers in it. */
public final class SepticSizing {

  private SepticSizing() {}

  /** Volume in which a day's water comes to rest. */
  @Formula(
      id = "digester.retention-allowance",
      symbol = "A",
      expression = "P q; q = 0.9 of the water used",
      unit = "L",
      meaning = "Volume in which a day's wastewater comes to rest.",
      source = "who-1992-on-site")
  public static double retentionAllowanceL(
      @Argument(symbol = "P", unit = "1", min = 0, max = 200) double people,
      @Argument(symbol = "q", unit = "L/d", min = 0, max = 1000) double wastewaterLPerDay) {
    return people * wastewaterLPerDay;
  }

  /** Volume for the sludge and scum between two desludgings. */
  @Formula(
      id = "digester.sludge-allowance",
      symbol = "B",
      expression = "P N F S",
      unit = "L",
      meaning = "Volume for the sludge and scum that gather between two desludgings.",
      source = "who-1992-on-site")
  public static double sludgeAllowanceL(
      @Argument(symbol = "P", unit = "1", min = 0, max = 200) double people,
      @Argument(symbol = "N", unit = "a", min = 0, max = 30) double years,
      @Argument(symbol = "F", unit = "1", min = 0.5, max = 3) double coldFactor,
      @Argument(symbol = "S", unit = "L/a", min = 0, max = 300) double sludgeLPerYear) {
    return people * years * coldFactor * sludgeLPerYear;
  }

  /** Sludge and scum that had gathered in measured tanks. */
  @Formula(
      id = "digester.sludge-gathered",
      symbol = "V",
      expression = "179 t^0.675",
      unit = "L",
      meaning = "Sludge and scum that a person's wastewater had gathered in measured tanks.",
      source = "bounds-sludge")
  public static double sludgeGatheredL(
      @Argument(symbol = "t", unit = "a", min = 0, max = 30) double years) {
    return 179 * FastMath.pow(years, 0.675);
  }
}
