package org.marshlight.ethanol;

import org.marshlight.evidence.Coefficient;

/** Numbers of the mash and the still that are not physics; meaning and unit stand in the book. */
record EthanolCoefficients(
    @Coefficient("ethanol.fermentation") double fermentation,
    @Coefficient("ethanol.sugar-release") double sugarRelease,
    @Coefficient("ethanol.malt-release") double maltRelease,
    @Coefficient("ethanol.malt-dose") double maltDose,
    @Coefficient("ethanol.enzyme-dose") double enzymeDose,
    @Coefficient("ethanol.yeast-dose") double yeastDose,
    @Coefficient("ethanol.yeast-limit") double yeastLimit,
    @Coefficient("ethanol.water-temperature") double waterTemperatureC,
    @Coefficient("ethanol.mash-temperature") double mashTemperatureC,
    @Coefficient("ethanol.beer-temperature") double beerTemperatureC,
    @Coefficient("ethanol.mash-heat-reused") double mashHeatReused,
    @Coefficient("ethanol.vessel-loss") double vesselLoss,
    @Coefficient("ethanol.heat-capacity-of-water") double heatCapacityOfWater,
    @Coefficient("ethanol.heat-capacity-of-ethanol") double heatCapacityOfEthanol,
    @Coefficient("ethanol.heat-capacity-of-solids") double heatCapacityOfSolids,
    @Coefficient("ethanol.latent-heat-of-ethanol") double latentEthanolKJMol,
    @Coefficient("ethanol.latent-heat-of-water") double latentWaterKJMol,
    @Coefficient("ethanol.net-heating-value") double netHeatingValueMJKg,
    @Coefficient("ethanol.water-evaporation") double waterEvaporationMJKg,
    @Coefficient("ethanol.pure-flash-point") double pureFlashPointC,
    @Coefficient("ethanol.pot-end-strength") double potEndStrength,
    @Coefficient("ethanol.column-end-strength") double columnEndStrength,
    @Coefficient("ethanol.column-recovery") double columnRecovery,
    @Coefficient("ethanol.vapour-loss") double vapourLoss,
    @Coefficient("ethanol.fuel-strength") double fuelStrength,
    @Coefficient("ethanol.electricity") double electricityKWhKg,
    @Coefficient("ethanol.stillage-density") double stillageDensityKgL,
    @Coefficient("ethanol.methane-share") double methaneShare,
    @Coefficient("ethanol.compost-dry-loss") double compostDryLoss,
    @Coefficient("ethanol.compost-nitrogen-loss") double compostNitrogenLoss) {}
