package org.marshlight.compost;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Moisture and carbon to nitrogen of a mix of two materials, and what to add to change them. */
public final class Mixing {

  private static final double PERCENT = 100;
  private static final double FREE_AIR_LOST_PERCENT_M3_KG = 0.09;

  private Mixing() {}

  /** Moisture of a mix. */
  @Formula(
      id = "compost.mix-moisture",
      symbol = "G",
      expression = "(Q1 M1 + Q2 M2) / (Q1 + Q2)",
      unit = "1",
      meaning = "Moisture of a mix of two materials, of the mass as it stands.",
      source = "richard-trautmann-1996",
      equation = "moisture")
  public static double moisture(
      @Argument(symbol = "Q1", unit = "kg", min = 0, max = 1e9) double firstKg,
      @Argument(symbol = "M1", unit = "1", min = 0, max = 1) double firstMoisture,
      @Argument(symbol = "Q2", unit = "kg", min = 0, max = 1e9) double secondKg,
      @Argument(symbol = "M2", unit = "1", min = 0, max = 1) double secondMoisture) {
    return (firstKg * firstMoisture + secondKg * secondMoisture) / (firstKg + secondKg);
  }

  /** Carbon to nitrogen of a mix. */
  @Formula(
      id = "compost.mix-carbon-to-nitrogen",
      symbol = "R",
      expression = "(Q1 C1 (1 - M1) + Q2 C2 (1 - M2)) / (Q1 N1 (1 - M1) + Q2 N2 (1 - M2))",
      unit = "kg/kg",
      meaning = "Carbon to nitrogen of a mix of two materials; carbon and nitrogen of dry mass.",
      source = "richard-trautmann-1996",
      equation = "carbon to nitrogen")
  public static double carbonToNitrogen(
      @Argument(symbol = "Q1", unit = "kg", min = 0, max = 1e9) double firstKg,
      @Argument(symbol = "M1", unit = "1", min = 0, max = 1) double firstMoisture,
      @Argument(symbol = "C1", unit = "1", min = 0, max = 1) double firstCarbon,
      @Argument(symbol = "N1", unit = "1", min = 0, max = 1) double firstNitrogen,
      @Argument(symbol = "Q2", unit = "kg", min = 0, max = 1e9) double secondKg,
      @Argument(symbol = "M2", unit = "1", min = 0, max = 1) double secondMoisture,
      @Argument(symbol = "C2", unit = "1", min = 0, max = 1) double secondCarbon,
      @Argument(symbol = "N2", unit = "1", min = 0, max = 1) double secondNitrogen) {
    double first = firstKg * (1 - firstMoisture);
    double second = secondKg * (1 - secondMoisture);
    return (first * firstCarbon + second * secondCarbon)
        / (first * firstNitrogen + second * secondNitrogen);
  }

  /** What to add for a moisture. */
  @Formula(
      id = "compost.addition-for-moisture",
      symbol = "Q2",
      expression = "Q1 (G - M1) / (M2 - G)",
      unit = "kg",
      meaning =
          "Mass of a second material that brings the first to a moisture between theirs; negative"
              + " where the goal is not between them.",
      source = "richard-trautmann-1996",
      equation = "moisture, solved")
  public static double additionForMoistureKg(
      @Argument(symbol = "Q1", unit = "kg", min = 0, max = 1e9) double massKg,
      @Argument(symbol = "M1", unit = "1", min = 0, max = 1) double moisture,
      @Argument(symbol = "M2", unit = "1", min = 0, max = 1) double addedMoisture,
      @Argument(symbol = "G", unit = "1", min = 0, max = 1) double goal) {
    return massKg * (goal - moisture) / (addedMoisture - goal);
  }

  /** What to add for a ratio of carbon to nitrogen. */
  @Formula(
      id = "compost.addition-for-carbon-to-nitrogen",
      symbol = "Q2",
      expression = "Q1 N1 (R - C1/N1) (1 - M1) / (N2 (C2/N2 - R) (1 - M2))",
      unit = "kg",
      meaning =
          "Mass of a second material that brings the first to a ratio of carbon to nitrogen"
              + " between theirs; negative where the goal is not between them.",
      source = "richard-trautmann-1996",
      equation = "carbon to nitrogen, solved")
  public static double additionForRatioKg(
      @Argument(symbol = "Q1", unit = "kg", min = 0, max = 1e9) double massKg,
      @Argument(symbol = "M1", unit = "1", min = 0, max = 1) double moisture,
      @Argument(symbol = "C1", unit = "1", min = 0, max = 1) double carbon,
      @Argument(symbol = "N1", unit = "1", min = 0, max = 1) double nitrogen,
      @Argument(symbol = "M2", unit = "1", min = 0, max = 1) double addedMoisture,
      @Argument(symbol = "C2", unit = "1", min = 0, max = 1) double addedCarbon,
      @Argument(symbol = "N2", unit = "1", min = 0, max = 1) double addedNitrogen,
      @Argument(symbol = "R", unit = "kg/kg", min = 1, max = 1000) double goal) {
    return massKg
        * (goal * nitrogen - carbon)
        * (1 - moisture)
        / ((addedCarbon - goal * addedNitrogen) * (1 - addedMoisture));
  }

  /** Air between the pieces of a mix. */
  @Formula(
      id = "compost.free-air-space",
      symbol = "FAS",
      expression = "1 - 0.09 rho / 100",
      unit = "1",
      meaning = "Share of a moist mix's volume that is air, from its bulk density alone.",
      source = "agnew-2003")
  public static double freeAirSpace(
      @Argument(symbol = "rho", unit = "kg/m3", min = 0, max = 20000) double bulkDensityKgM3) {
    return Math.max(0, 1 - FREE_AIR_LOST_PERCENT_M3_KG * bulkDensityKgM3 / PERCENT);
  }
}
