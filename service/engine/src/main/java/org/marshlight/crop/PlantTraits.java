package org.marshlight.crop;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/** A plant of the catalogue. Masses are dry; shares are of dry mass unless said. */
@CatalogueRow("plants")
public record PlantTraits(
    @Coefficient("radiation-use") double radiationUse,
    @Coefficient("base-temperature") double baseTemperature,
    @Coefficient("optimum-temperature") double optimumTemperature,
    @Coefficient("decline-temperature") double declineTemperature,
    @Coefficient("limit-temperature") double limitTemperature,
    @Coefficient("canopy-degree-days") double canopyDegreeDays,
    @Coefficient("canopy-greatest") double canopyGreatest,
    @Coefficient("organ-share-early") double organShareEarly,
    @Coefficient("organ-share-late") double organShareLate,
    @Coefficient("storage-loss") double storageLoss,
    @Coefficient("tops-loss") double topsLoss,
    @Coefficient("organ-of-underground") double organOfUnderground,
    @Coefficient("full-canopy-reserve") double fullCanopyReserve,
    @Coefficient("hardiness") double hardiness,
    @Coefficient("tops-nitrogen") double topsNitrogen,
    @Coefficient("tops-phosphorus") double topsPhosphorus,
    @Coefficient("tops-potassium") double topsPotassium,
    @Coefficient("organ-nitrogen") double organNitrogen,
    @Coefficient("organ-phosphorus") double organPhosphorus,
    @Coefficient("organ-potassium") double organPotassium,
    @Coefficient("organ-moisture") double organMoisture,
    @Coefficient("tops-moisture") double topsMoisture,
    @Coefficient("organ-starch") double organStarch,
    @Coefficient("organ-sugar") double organSugar,
    @Coefficient("organ-ash") double organAsh,
    @Coefficient("tops-ash") double topsAsh,
    @Coefficient("crop-coefficient") double cropCoefficient,
    @Coefficient("methane") double methane,
    @Coefficient("sustainable-harvest") double sustainableHarvest,
    @Coefficient("deepest-water") double deepestWater,
    @Coefficient("harvest-month") double harvestMonth,
    @Coefficient("first-year") double firstYear,
    @Coefficient("second-year") double secondYear) {}
