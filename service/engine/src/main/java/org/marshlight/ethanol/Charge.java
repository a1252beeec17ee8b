package org.marshlight.ethanol;

/**
 * What stands in a still.
 *
 * @param ethanolKg ethanol
 * @param waterKg water
 * @param solidsKg solids, which only take up heat
 */
record Charge(double ethanolKg, double waterKg, double solidsKg) {

  static Charge of(Beer beer) {
    return new Charge(beer.ethanolKg(), beer.waterKg(), beer.rest().totalSolidsKg());
  }

  /** Moles of its liquid, kmol. */
  double kmol() {
    return ethanolKg / Alcoholometry.ETHANOL + waterKg / Alcoholometry.WATER;
  }

  /** Mole fraction of ethanol in its liquid. */
  double moleFraction() {
    return ethanolKg / Alcoholometry.ETHANOL / kmol();
  }

  /** A liquid of so many moles and such a strength, with solids in it. */
  static Charge ofMoles(double kmol, double moleFraction, double solidsKg) {
    return new Charge(
        kmol * moleFraction * Alcoholometry.ETHANOL,
        kmol * (1 - moleFraction) * Alcoholometry.WATER,
        solidsKg);
  }

  /** Heat that warms it, kWh. */
  double sensibleKWh(double fromC, double toC, EthanolCoefficients c) {
    return DistillingHeat.sensibleKWh(waterKg, c.heatCapacityOfWater(), fromC, toC)
        + DistillingHeat.sensibleKWh(ethanolKg, c.heatCapacityOfEthanol(), fromC, toC)
        + DistillingHeat.sensibleKWh(solidsKg, c.heatCapacityOfSolids(), fromC, toC);
  }
}
