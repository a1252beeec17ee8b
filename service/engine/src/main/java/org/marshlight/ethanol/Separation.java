package org.marshlight.ethanol;

/**
 * What a still makes of a beer, and the heat that it takes.
 *
 * @param ethanolKg ethanol of the distillate
 * @param waterKg water of the distillate
 * @param leftEthanolKg ethanol left behind
 * @param leftWaterKg water left behind
 * @param feedKWh heat that brings the feed to the boil
 * @param recoveredKWh part of that heat that the stillage gives back
 * @param boilUpKWh heat of the vapour, reflux included
 * @param refluxKWh part of the boil-up that goes into reflux
 */
record Separation(
    double ethanolKg,
    double waterKg,
    double leftEthanolKg,
    double leftWaterKg,
    double feedKWh,
    double recoveredKWh,
    double boilUpKWh,
    double refluxKWh) {

  /** A beer too weak to distil: all of it is left. */
  static Separation none(Beer beer) {
    return new Separation(0, 0, beer.ethanolKg(), beer.waterKg(), 0, 0, 0, 0);
  }

  /** Strength by volume of the distillate; nought if there is none. */
  double strength() {
    return ethanolKg <= 0 ? 0 : Fermentation.beerStrength(ethanolKg, waterKg);
  }
}
