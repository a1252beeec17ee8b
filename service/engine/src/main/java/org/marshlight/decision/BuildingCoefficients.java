package org.marshlight.decision;

import org.marshlight.evidence.Coefficient;

/** Sizes of what is built beyond the plan's own, and the energy of making it. */
public record BuildingCoefficients(
    @Coefficient("decision.building-allowance") double allowance,
    @Coefficient("decision.pane-thickness") double paneThicknessM,
    @Coefficient("decision.glass-density") double glassDensityKgM3,
    @Coefficient("decision.insulation-conductivity") double insulationConductivity,
    @Coefficient("decision.bare-wall-resistance") double bareWallM2KW,
    @Coefficient("decision.liner-freeboard") double freeboardM,
    @Coefficient("decision.bed-length-over-width") double bedLengthOverWidth,
    @Coefficient("decision.excavation-margin") double excavationMarginM,
    @Coefficient("decision.glass-energy") double glassMJKg,
    @Coefficient("decision.insulation-energy") double insulationMJM3,
    @Coefficient("decision.liner-energy") double linerMJM2,
    @Coefficient("decision.gravel-energy") double gravelMJM3,
    @Coefficient("decision.excavation-energy") double excavationMJM3,
    @Coefficient("decision.gas-train-energy") double gasTrainMJ,
    @Coefficient("decision.gas-store-energy") double gasStoreMJM3,
    @Coefficient("decision.still-energy") double stillMJ) {}
