package org.marshlight.ethanol;

import java.util.OptionalDouble;

/**
 * A batch pot without plates, boiled until its residue is weak; it may distil its own distillate.
 */
final class PotStill {

  private PotStill() {}

  /**
   * Distils a beer.
   *
   * @param runs times that the pot runs, the first included
   * @param recoveredFraction share of the first residue's heat that preheats the feed
   * @param pressureKPa pressure of the air
   */
  static Separation distil(
      Beer beer, int runs, double recoveredFraction, EthanolCoefficients c, double pressureKPa) {
    double end = Alcoholometry.moleFractionOfVolume(c.potEndStrength());
    if (Charge.of(beer).moleFraction() <= end) {
      return Separation.none(beer);
    }
    Separation separation = run(Charge.of(beer), end, recoveredFraction, c, pressureKPa);
    for (int run = 1; run < runs; run++) {
      Separation next =
          run(new Charge(separation.ethanolKg(), separation.waterKg(), 0), end, 0, c, pressureKPa);
      separation =
          new Separation(
              next.ethanolKg(),
              next.waterKg(),
              separation.leftEthanolKg() + next.leftEthanolKg(),
              separation.leftWaterKg() + next.leftWaterKg(),
              separation.feedKWh() + next.feedKWh(),
              separation.recoveredKWh(),
              separation.boilUpKWh() + next.boilUpKWh(),
              0);
    }
    return separation;
  }

  /** Strength by volume of what the first of two runs makes; empty if there is no second. */
  static OptionalDouble firstRunStrength(Beer beer, int runs, EthanolCoefficients c) {
    double end = Alcoholometry.moleFractionOfVolume(c.potEndStrength());
    if (runs < 2 || beer.ethanolKg() <= 0 || Charge.of(beer).moleFraction() <= end) {
      return OptionalDouble.empty();
    }
    double distillate = Rayleigh.distillateMoleFraction(Charge.of(beer).moleFraction(), end);
    Charge spirit = Charge.ofMoles(1, distillate, 0);
    return OptionalDouble.of(Fermentation.beerStrength(spirit.ethanolKg(), spirit.waterKg()));
  }

  private static Separation run(
      Charge charge,
      double end,
      double recoveredFraction,
      EthanolCoefficients c,
      double pressureKPa) {
    double left = charge.kmol() * Rayleigh.residueFraction(charge.moleFraction(), end);
    Charge residue = Charge.ofMoles(left, end, charge.solidsKg());
    double ethanol = charge.ethanolKg() - residue.ethanolKg();
    double water = charge.waterKg() - residue.waterKg();
    double startC = EthanolWaterEquilibrium.bubbleTemperatureC(charge.moleFraction(), pressureKPa);
    double endC = EthanolWaterEquilibrium.bubbleTemperatureC(end, pressureKPa);
    double feed = charge.sensibleKWh(c.beerTemperatureC(), startC, c);
    double returnable = residue.sensibleKWh(c.beerTemperatureC(), endC, c);
    double boilUp =
        DistillingHeat.latentKWh(ethanol, water, c.latentEthanolKJMol(), c.latentWaterKJMol())
            + residue.sensibleKWh(startC, endC, c);
    return new Separation(
        ethanol,
        water,
        residue.ethanolKg(),
        residue.waterKg(),
        feed,
        recoveredFraction * Math.min(feed, returnable),
        boilUp,
        0);
  }
}
