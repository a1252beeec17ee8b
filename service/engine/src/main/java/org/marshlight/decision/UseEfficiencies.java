package org.marshlight.decision;

import org.marshlight.digester.GasPurpose;
import org.marshlight.evidence.Coefficient;

/** Useful share of the gas that each use burns. */
public record UseEfficiencies(
    @Coefficient("decision.burner-efficiency") double cooking,
    @Coefficient("decision.hot-water-efficiency") double hotWater,
    @Coefficient("decision.lamp-efficiency") double lamp,
    @Coefficient("decision.engine-efficiency") double engine) {

  /** Useful share of a use; warming the tank is of use only by the gas that it brings. */
  double of(GasPurpose purpose) {
    return switch (purpose) {
      case COOKING -> cooking;
      case HOT_WATER -> hotWater;
      case LAMP -> lamp;
      case ENGINE -> engine;
      case TANK_HEATING -> 0;
    };
  }
}
