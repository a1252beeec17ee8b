package org.marshlight.compost;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** What compost gives to land, in the terms of growers. */
public final class NutrientReturn {

  private static final double PHOSPHORUS = 30.974;
  private static final double POTASSIUM = 39.098;
  private static final double OXYGEN = 15.999;
  private static final double M2_PER_HA = 10_000;
  private static final double KG_PER_TONNE = 1000;

  private NutrientReturn() {}

  /** Phosphorus as growers count it. */
  @Formula(
      id = "compost.phosphate-of-phosphorus",
      symbol = "P2O5",
      expression = "P (2 M_P + 5 M_O) / (2 M_P)",
      unit = "kg",
      meaning = "Phosphorus counted as its oxide P2O5.",
      source = "stoichiometry")
  public static double phosphateKg(
      @Argument(symbol = "P", unit = "kg", min = 0, max = 1e9) double phosphorusKg) {
    return phosphorusKg * (2 * PHOSPHORUS + 5 * OXYGEN) / (2 * PHOSPHORUS);
  }

  /** Potassium as growers count it. */
  @Formula(
      id = "compost.potash-of-potassium",
      symbol = "K2O",
      expression = "K (2 M_K + M_O) / (2 M_K)",
      unit = "kg",
      meaning = "Potassium counted as its oxide K2O.",
      source = "stoichiometry")
  public static double potashKg(
      @Argument(symbol = "K", unit = "kg", min = 0, max = 1e9) double potassiumKg) {
    return potassiumKg * (2 * POTASSIUM + OXYGEN) / (2 * POTASSIUM);
  }

  /** What a crop carries off. */
  @Formula(
      id = "compost.crop-removal",
      symbol = "u",
      expression = "Y c",
      unit = "kg/har",
      meaning = "Nutrient that a crop carries off a hectare.",
      source = "hegde-1997")
  public static double cropRemovalKgHa(
      @Argument(symbol = "Y", unit = "t/har", min = 0, max = 500) double yieldTHa,
      @Argument(symbol = "c", unit = "kg/t", min = 0, max = 100) double removalKgT) {
    return yieldTHa * removalKgT;
  }

  /** Land that an amount of a nutrient serves. */
  @Formula(
      id = "compost.land-served",
      symbol = "A",
      expression = "10 000 m / u",
      unit = "m2",
      meaning = "Land that an amount of a nutrient serves at a rate for each hectare.",
      source = "common-practice")
  public static double landM2(
      @Argument(symbol = "m", unit = "kg", min = 0, max = 1e9) double nutrientKg,
      @Argument(symbol = "u", unit = "kg/har", min = 0.001, max = 10000) double rateKgHa) {
    return nutrientKg * M2_PER_HA / rateKgHa;
  }

  /** Fertiliser that holds an amount of a nutrient. */
  @Formula(
      id = "compost.fertiliser-mass",
      symbol = "F",
      expression = "m / s",
      unit = "kg",
      meaning = "Mass of a fertiliser that holds an amount of a nutrient.",
      source = "dairy-soils-manual")
  public static double fertiliserKg(
      @Argument(symbol = "m", unit = "kg", min = 0, max = 1e9) double nutrientKg,
      @Argument(symbol = "s", unit = "1", min = 0.001, max = 1) double share) {
    return nutrientKg / share;
  }

  /** Cost of an amount of fertiliser. */
  @Formula(
      id = "compost.fertiliser-cost",
      symbol = "K",
      expression = "F p / 1000",
      unit = "1",
      meaning = "Cost of an amount of fertiliser, in the currency of its price.",
      source = "dairy-soils-manual")
  public static double fertiliserCost(
      @Argument(symbol = "F", unit = "kg", min = 0, max = 1e9) double fertiliserKg,
      @Argument(symbol = "p", unit = "/t", min = 0, max = 1e6) double pricePerTonne) {
    return fertiliserKg * pricePerTonne / KG_PER_TONNE;
  }
}
