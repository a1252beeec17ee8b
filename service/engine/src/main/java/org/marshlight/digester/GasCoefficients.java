package org.marshlight.digester;

import org.marshlight.evidence.Coefficient;

/** Coefficients of gas use. */
public record GasCoefficients(
    @Coefficient("digester.burner-cooking") double cookingKW,
    @Coefficient("digester.burner-hot-water") double hotWaterKW,
    @Coefficient("digester.burner-lamp") double lampKW,
    @Coefficient("digester.burner-engine") double engineKW,
    @Coefficient("digester.meal-energy") double mealKWh,
    @Coefficient("digester.insulation-instead") double insulationInsteadM2KW,
    @Coefficient("digester.restart-lag") double restartLagDays) {

  /** Gas that one burner, lamp or engine burns, kW at net heating value. */
  double powerKW(GasPurpose purpose) {
    return switch (purpose) {
      case COOKING -> cookingKW;
      case HOT_WATER -> hotWaterKW;
      case LAMP -> lampKW;
      case ENGINE -> engineKW;
      case TANK_HEATING -> 0;
    };
  }
}
