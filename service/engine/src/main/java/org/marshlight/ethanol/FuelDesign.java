package org.marshlight.ethanol;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * How fuel alcohol is made from the harvest.
 *
 * @param still the still
 */
@Meaning("How fuel alcohol is made from the harvest.")
public record FuelDesign(
    @Quantity(
            unit = "1",
            min = 0,
            max = 1,
            meaning = "Share of the lifted storage organs that is mashed.",
            usual = "ethanol.default.mashed-fraction")
        Double mashedFraction,
    @Meaning("How starch is turned to sugar.") @Usual("enzyme") MashRoute route,
    @Valid @Meaning("The still; a pot still if not given.") StillDesign still,
    @Meaning("Id of the fuel that heats mash and still.")
        @CatalogueId("fuels")
        @Usual("firewood")
        @Size(max = 60)
        String heat) {}
