package org.marshlight.wetland;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/** Rates and limits of one kind of bed; areal rates in m/a at 20 Cel. */
@CatalogueRow("bed-kinds")
public record BedKindRates(
    @Coefficient("bod5-rate") double bod5Rate,
    @Coefficient("bod5-tanks") double bod5Tanks,
    @Coefficient("bod5-theta") double bod5Theta,
    @Coefficient("bod5-background-share") double bod5BackgroundShare,
    @Coefficient("bod5-strength-exponent") double bod5StrengthExponent,
    @Coefficient("solids-rate") double solidsRate,
    @Coefficient("solids-tanks") double solidsTanks,
    @Coefficient("solids-background") double solidsBackground,
    @Coefficient("solids-background-share") double solidsBackgroundShare,
    @Coefficient("solids-background-most") double solidsBackgroundMost,
    @Coefficient("nitrogen-tanks") double nitrogenTanks,
    @Coefficient("organic-nitrogen-rate") double organicNitrogenRate,
    @Coefficient("organic-nitrogen-theta") double organicNitrogenTheta,
    @Coefficient("organic-nitrogen-background") double organicNitrogenBackground,
    @Coefficient("ammonium-rate") double ammoniumRate,
    @Coefficient("ammonium-theta") double ammoniumTheta,
    @Coefficient("nitrate-rate") double nitrateRate,
    @Coefficient("nitrate-theta") double nitrateTheta,
    @Coefficient("coupled-denitrification") double coupledDenitrification,
    @Coefficient("oxygen-supply") double oxygenSupply,
    @Coefficient("total-nitrogen-rate") double totalNitrogenRate,
    @Coefficient("total-nitrogen-theta") double totalNitrogenTheta,
    @Coefficient("total-nitrogen-background") double totalNitrogenBackground,
    @Coefficient("phosphorus-tanks") double phosphorusTanks,
    @Coefficient("phosphorus-rate-young") double phosphorusRateYoung,
    @Coefficient("phosphorus-rate-old") double phosphorusRateOld,
    @Coefficient("phosphorus-background") double phosphorusBackground,
    @Coefficient("coliform-rate") double coliformRate,
    @Coefficient("coliform-theta") double coliformTheta,
    @Coefficient("coliform-tanks") double coliformTanks,
    @Coefficient("coliform-background") double coliformBackground,
    @Coefficient("cold-floor") double coldFloor,
    @Coefficient("cold-from") double coldFrom,
    @Coefficient("heat-exchange") double heatExchange,
    @Coefficient("dormant-crop-coefficient") double dormantCropCoefficient,
    @Coefficient("reed-bod5-rate") double reedBod5Rate,
    @Coefficient("reed-bod5-theta") double reedBod5Theta,
    @Coefficient("reed-solids-intercept") double reedSolidsIntercept,
    @Coefficient("reed-solids-slope") double reedSolidsSlope) {}
