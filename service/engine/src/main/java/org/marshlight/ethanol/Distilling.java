package org.marshlight.ethanol;

/**
 * A year's distilling and its heat.
 *
 * @param separation what the still makes
 * @param ethanolKg ethanol that reaches the fuel tank
 * @param waterKg water that reaches it
 * @param mashKWh heat that cooks the mash
 * @param mashReusedKWh part of it that warms the next mash
 * @param vesselLossKWh heat lost from the vessels
 * @param processKWh heat delivered to mash and still
 * @param firedKWh energy of the source that gives it
 * @param spentKWh primary energy of that and of bought electricity; none of the sun's
 * @param fuelKWh net heating value of the product as made
 */
record Distilling(
    Separation separation,
    double ethanolKg,
    double waterKg,
    double mashKWh,
    double mashReusedKWh,
    double vesselLossKWh,
    double processKWh,
    double firedKWh,
    double spentKWh,
    double fuelKWh) {

  /** What is left of the product's energy after the primary energy spent on it, kWh. */
  double netKWh() {
    return fuelKWh - spentKWh;
  }

  /** Ethanol whose vapour is lost on the way, kg. */
  double lostEthanolKg() {
    return separation.ethanolKg() - ethanolKg;
  }

  /** Water lost with it, kg. */
  double lostWaterKg() {
    return separation.waterKg() - waterKg;
  }
}
