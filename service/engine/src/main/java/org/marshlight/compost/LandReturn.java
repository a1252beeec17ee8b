package org.marshlight.compost;

import org.marshlight.feed.Matter;

/** What compost gives to land, by what crops take and by what the law allows. */
final class LandReturn {

  private static final double M2_PER_HA = 10_000;

  private LandReturn() {}

  static CompostEstimate.Land of(CompostRun run) {
    ReturnCoefficients c = run.returning();
    Matter finished = run.heap().finished();
    double nitrogen = finished.nitrogenKg();
    double firstYear = nitrogen * availableNitrogen(finished, c);
    double phosphorus = finished.phosphorusKg() * c.availablePhosphorus();
    double potassium = finished.potassiumKg() * c.availablePotassium();
    double phosphate =
        NutrientReturn.fertiliserKg(NutrientReturn.phosphateKg(phosphorus), c.phosphateP2O5());
    double urea =
        NutrientReturn.fertiliserKg(
            Math.max(0, firstYear - phosphate * c.phosphateNitrogen()), c.ureaNitrogen());
    double potash = NutrientReturn.fertiliserKg(NutrientReturn.potashKg(potassium), c.potashK2O());
    double yield = c.gardenYieldTHa();
    return new CompostEstimate.Land(
        run.design().landAreaM2(),
        firstYear,
        nitrogen * c.availableNitrogenLater(),
        phosphorus,
        potassium,
        fedM2(firstYear, yield, c.removalOfNitrogenKgT()),
        fedM2(phosphorus, yield, c.removalOfPhosphorusKgT()),
        fedM2(potassium, yield, c.removalOfPotassiumKgT()),
        NutrientReturn.landM2(nitrogen, c.nitrogenLimitKgHa()),
        nitrogen * M2_PER_HA / run.design().landAreaM2(),
        urea,
        phosphate,
        potash,
        NutrientReturn.fertiliserCost(urea, c.ureaPricePerTonne())
            + NutrientReturn.fertiliserCost(phosphate, c.phosphatePricePerTonne())
            + NutrientReturn.fertiliserCost(potash, c.potashPricePerTonne()));
  }

  /** Share of its nitrogen that a compost gives in the first year. */
  static double availableNitrogen(Matter finished, ReturnCoefficients c) {
    return finished.nitrogenKg() > c.richCompost() * finished.totalSolidsKg()
        ? c.availableNitrogenRich()
        : c.availableNitrogen();
  }

  private static double fedM2(double nutrientKg, double yieldTHa, double removalKgT) {
    return NutrientReturn.landM2(nutrientKg, NutrientReturn.cropRemovalKgHa(yieldTHa, removalKgT));
  }
}
