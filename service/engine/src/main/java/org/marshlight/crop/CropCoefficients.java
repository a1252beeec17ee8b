package org.marshlight.crop;

import org.marshlight.evidence.Coefficient;

/** Coefficients of stands of any plant. Days count from the middle of winter's first of January. */
public record CropCoefficients(
    @Coefficient("crop.par-share") double parShare,
    @Coefficient("crop.available-nitrogen") double availableNitrogen,
    @Coefficient("crop.available-phosphorus") double availablePhosphorus,
    @Coefficient("crop.available-potassium") double availablePotassium,
    @Coefficient("crop.season-day") double seasonDay,
    @Coefficient("crop.allocation-day") double allocationDay,
    @Coefficient("crop.allocation-span") double allocationSpan,
    @Coefficient("crop.mortality-day") double mortalityDay,
    @Coefficient("crop.early-mortality") double earlyMortality,
    @Coefficient("crop.photoperiod-day") double photoperiodDay,
    @Coefficient("crop.photoperiod-end") double photoperiodEnd,
    @Coefficient("crop.photoperiod-span") double photoperiodSpan,
    @Coefficient("crop.senescence-leaf") double senescenceLeaf,
    @Coefficient("crop.senescence-rate") double senescenceRate,
    @Coefficient("crop.senescence-return") double senescenceReturn,
    @Coefficient("crop.spring-share") double springShare,
    @Coefficient("crop.spring-degree-days") double springDegreeDays,
    @Coefficient("crop.spring-efficiency") double springEfficiency,
    @Coefficient("crop.storage-warm-factor") double storageWarmFactor,
    @Coefficient("crop.storage-q10") double storageQ10,
    @Coefficient("crop.storage-respired") double storageRespired,
    @Coefficient("crop.frost-death") double frostDeath,
    @Coefficient("crop.vigour-exponent") double vigourExponent,
    @Coefficient("crop.starch-spring-day") double starchSpringDay,
    @Coefficient("crop.starch-lowest-day") double starchLowestDay,
    @Coefficient("crop.starch-full-day") double starchFullDay,
    @Coefficient("crop.starch-lowest") double starchLowest,
    @Coefficient("crop.tops-cod") double topsCod,
    @Coefficient("crop.tops-carbon") double topsCarbon,
    @Coefficient("crop.organ-rest-cod") double organRestCod,
    @Coefficient("crop.organ-rest-carbon") double organRestCarbon) {}
