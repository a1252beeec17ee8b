package org.marshlight.ethanol;

/**
 * A column with plates and reflux, fed with boiling beer at its best place. It strips the beer to a
 * stated weakness, but takes no more than a stated share of the alcohol; strength and recovery
 * follow from plates and reflux.
 */
final class ColumnStill {

  /** A feed at its boiling point. */
  static final double SATURATED = 1;

  private ColumnStill() {}

  /**
   * Distils a beer.
   *
   * @param recoveredFraction share of the stillage's heat that preheats the feed
   * @param pressureKPa pressure of the air
   */
  static Separation distil(
      Beer beer,
      double theoreticalPlates,
      double refluxRatio,
      double recoveredFraction,
      EthanolCoefficients c,
      double pressureKPa) {
    Charge charge = Charge.of(beer);
    double feed = charge.moleFraction();
    double stripped = Alcoholometry.moleFractionOfVolume(c.columnEndStrength());
    if (feed <= stripped) {
      return Separation.none(beer);
    }
    double taken = c.columnRecovery();
    double distillate =
        McCabeThiele.distillate(
            theoreticalPlates,
            feed,
            x ->
                McCabeThiele.Lines.of(
                    x, feed, bottoms(x, feed, stripped, taken), refluxRatio, SATURATED));
    double bottoms = bottoms(distillate, feed, stripped, taken);
    double over = charge.kmol() * (feed - bottoms) / (distillate - bottoms);
    Charge product = Charge.ofMoles(over, distillate, 0);
    Charge left = Charge.ofMoles(charge.kmol() - over, bottoms, charge.solidsKg());
    double vapour = EquilibriumCurve.STANDARD.vapour(bottoms);
    double latent = vapour * c.latentEthanolKJMol() + (1 - vapour) * c.latentWaterKJMol();
    double feedKWh =
        charge.sensibleKWh(
            c.beerTemperatureC(), EthanolWaterEquilibrium.bubbleTemperatureC(feed, pressureKPa), c);
    double returnable =
        left.sensibleKWh(
            c.beerTemperatureC(),
            EthanolWaterEquilibrium.bubbleTemperatureC(bottoms, pressureKPa),
            c);
    double boilUp = DistillingHeat.boilUpKWh(over, refluxRatio, latent);
    return new Separation(
        product.ethanolKg(),
        product.waterKg(),
        left.ethanolKg(),
        left.waterKg(),
        feedKWh,
        recoveredFraction * Math.min(feedKWh, returnable),
        boilUp,
        boilUp * refluxRatio / (refluxRatio + 1));
  }

  /**
   * Mole fraction of ethanol in the bottoms: the weakness to which the beer is stripped, or, where
   * that asks for more, what is left when the greatest share has been taken.
   *
   * @param stripped mole fraction to which the beer is stripped
   * @param taken greatest share of the alcohol that is taken
   */
  static double bottoms(double distillate, double feed, double stripped, double taken) {
    return Math.max(stripped, feed * (1 - taken) / (1 - taken * feed / distillate));
  }
}
