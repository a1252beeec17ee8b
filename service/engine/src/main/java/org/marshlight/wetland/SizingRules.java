package org.marshlight.wetland;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Rules of thumb of public manuals for the area of a bed. */
public final class SizingRules {

  private SizingRules() {}

  @Formula(
      id = "wetland.area-of-load",
      symbol = "A",
      expression = "L / l",
      unit = "m2",
      meaning = "Area at which a bed gets no more than a loading limit.",
      source = "epa-wetlands-2000")
  public static double areaOfLoadM2(
      @Argument(symbol = "L", unit = "g/d", min = 0, max = 1e12) double loadGDay,
      @Argument(symbol = "l", unit = "g/(m2.d)", min = 0.001, max = 1e6) double limitGM2Day) {
    return loadGDay / limitGM2Day;
  }

  @Formula(
      id = "wetland.area-of-flow",
      symbol = "A",
      expression = "a Q",
      unit = "m2",
      meaning = "Area by a rule that goes by the flow alone.",
      source = "tva-1993")
  public static double areaOfFlowM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "a", unit = "m2.d/m3", min = 0, max = 1e6) double areaPerFlow) {
    return areaPerFlow * flowM3Day;
  }

  @Formula(
      id = "wetland.area-of-people",
      symbol = "A",
      expression = "a Q / q_p",
      unit = "m2",
      meaning = "Area by a rule that goes by people, each counted by the usual flow of one.",
      source = "gikas-tsihrintzis-2012")
  public static double areaOfPeopleM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "q_p", unit = "m3/d", min = 0.001, max = 10) double flowPerPerson,
      @Argument(symbol = "a", unit = "m2", min = 0, max = 1e6) double areaPerPerson) {
    return areaPerPerson * flowM3Day / flowPerPerson;
  }

  @Formula(
      id = "wetland.planning-area-open",
      symbol = "A",
      expression = "4.31e-3 Q",
      unit = "har",
      meaning = "Planning area of a bed with open water: 7 d at 0.3 m.",
      source = "natural-treatment-planning",
      equation = "2.6")
  public static double planningAreaOpenHa(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day) {
    return 4.31e-3 * flowM3Day;
  }

  @Formula(
      id = "wetland.planning-area-below",
      symbol = "A",
      expression = "1.85e-3 Q",
      unit = "har",
      meaning = "Planning area of a bed with water below its surface: 3 d at 0.3 m.",
      source = "natural-treatment-planning",
      equation = "2.6")
  public static double planningAreaBelowHa(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day) {
    return 1.85e-3 * flowM3Day;
  }

  @Formula(
      id = "wetland.soil-absorption-area",
      symbol = "A",
      expression = "1000 Q / LTAR",
      unit = "m2",
      meaning = "Area of soil absorption that a flow needs.",
      source = "south-carolina-ltar")
  public static double soilAbsorptionAreaM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "LTAR", unit = "L/(m2.d)", min = 0.01, max = 1000)
          double acceptanceLM2Day) {
    return 1000 * flowM3Day / acceptanceLM2Day;
  }

  @Formula(
      id = "wetland.soil-absorption-with-reserve",
      symbol = "A_t",
      expression = "A (1 + r)",
      unit = "m2",
      meaning = "Soil absorption area with the ground kept free for its replacement.",
      source = "south-carolina-ltar")
  public static double withReserveM2(
      @Argument(symbol = "A", unit = "m2", min = 0, max = 1e12) double areaM2,
      @Argument(symbol = "r", unit = "1", min = 0, max = 10) double reserveShare) {
    return areaM2 * (1 + reserveShare);
  }
}
