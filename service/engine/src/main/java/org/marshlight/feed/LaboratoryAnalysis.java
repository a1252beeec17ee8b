package org.marshlight.feed;

import jakarta.validation.constraints.NotNull;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A feed's own analysis, for each kilogram as it is fed. What is not given stands in the
 * catalogue's proportion to what is.
 *
 * @param ammoniumNitrogenGKg ammonium nitrogen, a part of the total
 * @param phosphorusGKg phosphorus (P, not P2O5)
 * @param potassiumGKg potassium (K, not K2O)
 * @param methanePotentialM3Kg methane at 0 Cel that a test gave in the end for each kilogram of
 *     volatile solids, at most what the oxygen demand holds
 */
@Meaning(
    "A feed's own analysis, for each kilogram as it is fed; what is left out is the catalogue's.")
public record LaboratoryAnalysis(
    @NotNull @Quantity(unit = "g/kg", min = 1, max = 1000, meaning = "Dry mass.")
        Double totalSolidsGKg,
    @NotNull
        @Quantity(
            unit = "g/kg",
            min = 0.5,
            max = 1000,
            meaning = "Organic dry mass, at most the dry mass.")
        Double volatileSolidsGKg,
    @Quantity(
            unit = "g/kg",
            min = 0.4,
            max = 3000,
            meaning = "Chemical oxygen demand, 0.8 to 3 times the organic dry mass.")
        Double codGKg,
    @Quantity(unit = "g/kg", min = 0.1, max = 900, meaning = "Organic carbon.") Double carbonGKg,
    @Quantity(unit = "g/kg", min = 0, max = 300, meaning = "Total nitrogen.") Double nitrogenGKg,
    @Quantity(
            unit = "g/kg",
            min = 0,
            max = 300,
            meaning = "Ammonium nitrogen, a part of the total nitrogen.")
        Double ammoniumNitrogenGKg,
    @Quantity(unit = "g/kg", min = 0, max = 200, meaning = "Phosphorus as P.") Double phosphorusGKg,
    @Quantity(unit = "g/kg", min = 0, max = 200, meaning = "Potassium as K.") Double potassiumGKg,
    @Quantity(
            unit = "m3/kg",
            min = 0,
            max = 1.1,
            meaning =
                "Methane at 0 Cel that a test gave in the end for each kilogram of volatile solids.")
        Double methanePotentialM3Kg) {}
