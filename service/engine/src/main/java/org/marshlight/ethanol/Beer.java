package org.marshlight.ethanol;

import org.marshlight.feed.Matter;

/**
 * A year's fermented mash.
 *
 * @param ethanolKg ethanol in it
 * @param waterKg water in it
 * @param rest all else in it: solids, unfermented sugar, minerals
 * @param mashWaterKg water of the mash as cooked; nought where there is nothing to cook it for
 * @param mashSolidsKg solids of the mash as cooked; nought where there is nothing to cook it for
 * @param carbonDioxideKg carbon dioxide set free
 * @param stoppedByStrength whether the yeast stopped at the strength that it bears
 */
record Beer(
    double ethanolKg,
    double waterKg,
    Matter rest,
    double mashWaterKg,
    double mashSolidsKg,
    double carbonDioxideKg,
    boolean stoppedByStrength) {

  static Beer of(Mash mash, EthanolCoefficients c) {
    Matter whole = mash.whole();
    double water = whole.waterKg() - Fermentation.hydrolysisWaterKg(mash.releasedStarchKg());
    double wanted = Fermentation.ethanolKg(mash.glucoseKg(), c.fermentation());
    double borne = Fermentation.ethanolOfStrengthKg(water, c.yeastLimit());
    double ethanol = Math.min(wanted, borne);
    double fermentedGlucose = ethanol / Fermentation.ethanolKg(1, 1);
    Matter rest =
        whole
            .minus(Matter.water(whole.waterKg()))
            .minus(Fermentation.starch(mash.releasedStarchKg()))
            .minus(Fermentation.glucose(mash.releasedSugarKg()))
            .plus(Fermentation.glucose(mash.glucoseKg() - fermentedGlucose));
    boolean cooked = mash.glucoseKg() > 0;
    return new Beer(
        ethanol,
        water,
        rest,
        cooked ? whole.waterKg() : 0,
        cooked ? whole.totalSolidsKg() : 0,
        Fermentation.carbonDioxideKg(ethanol),
        wanted > borne);
  }

  /** Strength by volume of its liquid; nought without ethanol. */
  double strength() {
    return ethanolKg <= 0 ? 0 : Fermentation.beerStrength(ethanolKg, waterKg);
  }

  /** The same ethanol and solids in as much water as gives another strength. */
  Beer withStrength(double volumeFraction) {
    double massFraction = Alcoholometry.massFraction(volumeFraction);
    double water = ethanolKg * (1 - massFraction) / massFraction;
    return new Beer(
        ethanolKg,
        water,
        rest,
        mashWaterKg + water - waterKg,
        mashSolidsKg,
        carbonDioxideKg,
        stoppedByStrength);
  }
}
