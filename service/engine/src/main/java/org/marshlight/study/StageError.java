package org.marshlight.study;

import org.marshlight.contract.WireName;
import org.marshlight.evidence.CoefficientSet;

/**
 * Which part of the models a figure's own error comes from. Each has one discrepancy coefficient:
 * measured less modelled temperature for the tank's warmth, measured over modelled for the others.
 */
enum StageError {
  NONE,
  TANK_HEAT,
  DIGESTER,
  WETLAND,
  CROP,
  ETHANOL,
  COMPOST;

  /** Id of the discrepancy coefficient. */
  String coefficient() {
    return "study.discrepancy." + WireName.of(this);
  }

  /**
   * A figure as it would be measured.
   *
   * @param modelled the figure
   * @param discrepancy value of the discrepancy coefficient
   */
  double measured(double modelled, double discrepancy) {
    return switch (this) {
      case NONE -> modelled;
      case TANK_HEAT -> modelled + discrepancy;
      default -> modelled * discrepancy;
    };
  }

  /** The central discrepancy of a set. */
  double central(CoefficientSet set) {
    return this == NONE ? Double.NaN : set.value(coefficient());
  }
}
