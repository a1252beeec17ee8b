package org.marshlight.ethanol;

import java.util.OptionalDouble;
import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/**
 * All that is worked out for one plan, before it is told.
 *
 * @param fuel how fuel is made, with all its defaults
 * @param mash what goes in
 * @param beer what ferments from it
 * @param distillery tun, still and fire
 * @param distilling what comes of it
 * @param electricityKWh electricity bought
 * @param set the coefficients of the run
 */
record EthanolRun(
    FuelDesign fuel,
    Mash mash,
    Beer beer,
    Distillery distillery,
    Distilling distilling,
    double electricityKWh,
    CoefficientSet set) {

  static EthanolRun of(
      FuelDesign fuel, StillDesign still, Harvest harvest, CoefficientSet set, double pressureKPa) {
    Distillery distillery = Distillery.of(fuel, still, set, pressureKPa);
    Mash mash = Mash.of(fuel, harvest, set);
    Beer beer = Beer.of(mash, distillery.c());
    double electricity =
        mash.glucoseKg() > 0 ? mash.organs().freshKg() * distillery.c().electricityKWhKg() : 0;
    return new EthanolRun(
        fuel, mash, beer, distillery, distillery.run(beer, electricity), electricity, set);
  }

  EthanolCoefficients c() {
    return distillery.c();
  }

  StillDesign still() {
    return distillery.still();
  }

  /** What the still leaves. */
  Matter stillage() {
    Separation separation = distilling.separation();
    return beer.rest()
        .plus(Fermentation.ethanol(separation.leftEthanolKg()))
        .plus(Matter.water(separation.leftWaterKg()));
  }

  /** Whether anything reaches the fuel tank. */
  boolean makesFuel() {
    return distilling.ethanolKg() > 0;
  }

  /** Strength by volume of the product; nought if there is none. */
  double productStrength() {
    return distilling.separation().strength();
  }

  /** Beer strength at which this plan is worth its own heat. */
  OptionalDouble breakEven() {
    return BreakEven.strength(distillery, beer, electricityKWh);
  }
}
