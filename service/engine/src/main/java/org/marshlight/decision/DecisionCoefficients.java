package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** Thresholds of the verdicts. */
public record DecisionCoefficients(
    @Coefficient("decision.burner-efficiency") double burnerEfficiency,
    @Coefficient("decision.gas-yes") double gasYes,
    @Coefficient("decision.gas-marginal") double gasMarginal,
    @Coefficient("decision.glass-yes") double glassYes,
    @Coefficient("decision.glass-marginal") double glassMarginal,
    @Coefficient("decision.water-heater-yield") double waterHeaterYield,
    @Coefficient("decision.bed-removal-yes") double bedRemovalYes,
    @Coefficient("decision.bed-removal-marginal") double bedRemovalMarginal,
    @Coefficient("decision.fuel-ratio-yes") double fuelRatioYes,
    @Coefficient("decision.compost-returned-yes") double compostReturnedYes,
    @Coefficient("decision.compost-returned-marginal") double compostReturnedMarginal) {}
