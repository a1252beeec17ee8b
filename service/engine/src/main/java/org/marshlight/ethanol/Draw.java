package org.marshlight.ethanol;

import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/**
 * What one bed gives to the mash.
 *
 * @param from name of the bed's process
 * @param plant id of the plant
 * @param organs storage organs mashed, their water included
 * @param starchKg starch in them
 * @param sugarKg free sugar in them, as hexose
 * @param statedStarchKg starch that the harvest says they hold
 * @param mashing how readily they are mashed
 */
record Draw(
    String from,
    String plant,
    Matter organs,
    double starchKg,
    double sugarKg,
    double statedStarchKg,
    Saccharification mashing) {

  private static final double ROUNDING = 1e-12;

  /**
   * The share of a lot that is mashed. Starch and sugar are held to what the organic mass, its
   * oxygen demand and its carbon allow, so that what is left of the organs never turns negative.
   */
  static Draw of(Harvest.Lot lot, double mashedFraction, CoefficientSet set) {
    Matter organs = lot.organs().times(mashedFraction);
    double starch = lot.starchKg() * mashedFraction;
    double sugar = lot.sugarKg() * mashedFraction;
    Matter needed = Fermentation.starch(starch).plus(Fermentation.glucose(sugar));
    double share =
        Math.min(
            share(organs.volatileSolidsKg(), needed.volatileSolidsKg()),
            Math.min(
                share(organs.codKg(), needed.codKg()),
                share(organs.organicCarbonKg(), needed.organicCarbonKg())));
    return new Draw(
        lot.from(),
        lot.plant(),
        organs,
        starch * share,
        sugar * share,
        starch,
        set.bind(Saccharification.class, lot.plant()));
  }

  /** Whether the organs cannot hold the starch that the harvest says they do. */
  boolean limited() {
    return starchKg < statedStarchKg * (1 - ROUNDING);
  }

  /** Water to add so that the mash can be stirred, kg. */
  double addedWaterKg() {
    return Math.max(0, organs.totalSolidsKg() * mashing.mashWaterKgKg() - organs.waterKg());
  }

  private static double share(double held, double needed) {
    return held >= needed ? 1 : Math.max(0, held / needed);
  }
}
