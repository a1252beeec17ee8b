package org.marshlight.decision;

import org.marshlight.digester.GasPurpose;
import org.marshlight.evidence.Coefficient;

/**
 * Useful share of the gas or alcohol that each use burns, and the electricity that would do the
 * same.
 *
 * @param cooking heat in the pot over gas burned
 * @param hotWater heat in the water over gas burned
 * @param alcohol heat in the pot over alcohol burned
 * @param engine work of an engine over gas burned
 * @param generator electricity of a generator over the work that drives it
 * @param gasLampLmW light of a gas lamp for each watt of gas, lm/W
 * @param electricLampLmW light of an electric lamp for each watt of electricity, lm/W
 * @param lightLmW light in lumens of each watt of white light, lm/W
 */
public record UseEfficiencies(
    @Coefficient("decision.burner-efficiency") double cooking,
    @Coefficient("decision.hot-water-efficiency") double hotWater,
    @Coefficient("decision.alcohol-burner-efficiency") double alcohol,
    @Coefficient("decision.engine-efficiency") double engine,
    @Coefficient("decision.generator-efficiency") double generator,
    @Coefficient("decision.gas-lamp-efficacy") double gasLampLmW,
    @Coefficient("decision.electric-lamp-efficacy") double electricLampLmW,
    @Coefficient("decision.efficacy-of-light") double lightLmW) {

  /** Useful share of a use; warming the tank is of use only by the gas that it brings. */
  double of(GasPurpose purpose) {
    return switch (purpose) {
      case COOKING -> cooking;
      case HOT_WATER -> hotWater;
      case LAMP -> gasLampLmW / lightLmW;
      case ENGINE -> engine;
      case TANK_HEATING -> 0;
    };
  }

  /**
   * Electricity for each unit of gas that a use burns, service for service: as much light, or what
   * the engine's generator gives. Nothing for heat, which takes the place of a fuel.
   */
  double electricityFor(GasPurpose purpose) {
    return switch (purpose) {
      case LAMP -> gasLampLmW / electricLampLmW;
      case ENGINE -> engine * generator;
      case COOKING, HOT_WATER, TANK_HEATING -> 0;
    };
  }
}
