package org.marshlight.wetland;

import org.marshlight.evidence.Coefficient;

/** Coefficients of beds of both kinds. */
public record WetlandCoefficients(
    @Coefficient("wetland.reference-bod5") double referenceBod5,
    @Coefficient("wetland.degradable-cod-per-bod5") double degradableCodPerBod5,
    @Coefficient("wetland.settling-inert-cod") double settlingInertCod,
    @Coefficient("wetland.buried-cod") double buriedCod,
    @Coefficient("wetland.buried-litter") double buriedLitter,
    @Coefficient("wetland.buried-nitrogen") double buriedNitrogen,
    @Coefficient("wetland.denitrifying-cod") double denitrifyingCod,
    @Coefficient("wetland.methane-most") double methaneMost,
    @Coefficient("wetland.phosphorus-ageing") double phosphorusAgeing,
    @Coefficient("wetland.coliform-log-removal") double coliformLogRemoval,
    @Coefficient("wetland.greatest-concentration") double greatestConcentration,
    @Coefficient("wetland.supplied-minerals") double suppliedMinerals,
    @Coefficient("wetland.solids-per-conductivity") double solidsPerConductivity,
    @Coefficient("wetland.small-stand-area") double smallStandArea,
    @Coefficient("wetland.field-area") double fieldArea,
    @Coefficient("wetland.field-crop-coefficient") double fieldCropCoefficient,
    @Coefficient("wetland.cold-to") double coldTo,
    @Coefficient("wetland.ice-growth") double iceGrowth,
    @Coefficient("wetland.ice-depth-share") double iceDepthShare,
    @Coefficient("wetland.mulch-as-soil") double mulchAsSoil,
    @Coefficient("wetland.mulch-advised") double mulchAdvised,
    @Coefficient("wetland.frost-air-temperature") double frostAirTemperature,
    @Coefficient("wetland.bed-slope") double bedSlope,
    @Coefficient("wetland.working-conductivity") double workingConductivity,
    @Coefficient("wetland.open-porosity") double openPorosity,
    @Coefficient("wetland.rooted-depth-share") double rootedDepthShare,
    @Coefficient("wetland.reed-ammonium-open-rate") double reedAmmoniumOpenRate,
    @Coefficient("wetland.reed-ammonium-theta") double reedAmmoniumTheta) {}
