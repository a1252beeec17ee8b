package org.marshlight.economy;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What things cost; without it the verdict rests on energy.
 *
 * @param currency ISO 4217 code
 * @param capital cost of building each part
 * @param yearlyCare money spent on upkeep a year
 * @param displacedFuel id of the fuel that the gas takes the place of
 * @param fuelPricePerKWh price of the displaced fuel per kWh of net heating value delivered
 * @param lifeYears years over which the plant is judged
 * @param discountRate real discount rate a year
 */
@Meaning("What things cost; without it the verdict rests on energy.")
public record MoneyDesign(
    @Meaning("ISO 4217 code of the currency.") @Pattern(regexp = "[A-Z]{3}") @Size(max = 3)
        String currency,
    @Valid @Meaning("Cost of building each part.") CapitalDesign capital,
    @Quantity(
            unit = "1",
            low = 0,
            high = 1e9,
            meaning = "Money spent on upkeep a year, in the currency.")
        Double yearlyCare,
    @Meaning("Id of the fuel that the gas takes the place of.")
        @CatalogueId("fuels")
        @Size(max = 60)
        String displacedFuel,
    @Quantity(
            unit = "1/(kW.h)",
            low = 0,
            high = 1e6,
            meaning = "Price of the displaced fuel per kWh of net heating value delivered.")
        Double fuelPricePerKWh,
    @Quantity(
            unit = "a",
            low = 1,
            high = 100,
            meaning = "Years over which the plant is judged.",
            usual = "economy.default.life")
        Double lifeYears,
    @Quantity(
            unit = "1",
            low = -0.99,
            high = 1,
            meaning = "Real discount rate a year, as a fraction.",
            usual = "economy.default.discount-rate")
        Double discountRate) {}
