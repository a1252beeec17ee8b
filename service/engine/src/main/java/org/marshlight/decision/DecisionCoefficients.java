package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** Thresholds of the verdicts. */
public record DecisionCoefficients(
    @Coefficient("decision.gas-yes") double gasYes,
    @Coefficient("decision.gas-marginal") double gasMarginal,
    @Coefficient("decision.glass-yes") double glassYes,
    @Coefficient("decision.glass-marginal") double glassMarginal,
    @Coefficient("decision.quilt-yes") double quiltYes,
    @Coefficient("decision.quilt-marginal") double quiltMarginal,
    @Coefficient("decision.quilt-cost-share") double quiltCostShare,
    @Coefficient("decision.feeding-yes") double feedingYes,
    @Coefficient("decision.feeding-marginal") double feedingMarginal,
    @Coefficient("decision.bed-removal-yes") double bedRemovalYes,
    @Coefficient("decision.bed-removal-marginal") double bedRemovalMarginal,
    @Coefficient("decision.one-bed-yes") double oneBedYes,
    @Coefficient("decision.one-bed-marginal") double oneBedMarginal,
    @Coefficient("decision.fuel-ratio-yes") double fuelRatioYes,
    @Coefficient("decision.compost-returned-yes") double compostReturnedYes,
    @Coefficient("decision.compost-returned-marginal") double compostReturnedMarginal,
    @Coefficient("decision.irrigated-share") double irrigatedShare,
    @Coefficient("decision.pressure-limit") double pressureLimit) {}
