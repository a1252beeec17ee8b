package org.marshlight.compost;

import org.marshlight.evidence.Coefficient;

/** Numbers of the heap's heat; meaning and unit stand in the book. */
record HeatCoefficients(
    @Coefficient("compost.heat-of-oxygen") double heatOfOxygenMJKg,
    @Coefficient("compost.evaporation-heat") double evaporationMJKg,
    @Coefficient("compost.rate-at-20") double rateAt20PerDay,
    @Coefficient("compost.conductivity") double conductivityWMK,
    @Coefficient("compost.film-resistance") double filmM2KW,
    @Coefficient("compost.air-excess") double airExcess,
    @Coefficient("compost.heat-capacity-of-water") double heatCapacityOfWater,
    @Coefficient("compost.heat-capacity-of-solids") double heatCapacityOfSolids) {

  /** The same heap with another rate, conductivity and excess of air. */
  HeatCoefficients with(double rate, double conductivity, double excess) {
    return new HeatCoefficients(
        heatOfOxygenMJKg,
        evaporationMJKg,
        rate,
        conductivity,
        filmM2KW,
        excess,
        heatCapacityOfWater,
        heatCapacityOfSolids);
  }
}
