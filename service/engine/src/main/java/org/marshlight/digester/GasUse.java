package org.marshlight.digester;

import jakarta.validation.constraints.NotNull;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** One thing that burns the gas. */
@Meaning("One thing that burns the gas.")
public record GasUse(
    @NotNull @Meaning("What it is.") GasPurpose use,
    @Quantity(
            unit = "h/d",
            low = 0,
            high = 24,
            meaning = "Hours a day that one burner, lamp or engine runs.")
        Double hoursPerDay,
    @Quantity(
            unit = "1/d",
            low = 0,
            high = 10,
            meaning = "Meals a day cooked for everyone; for cooking, in place of hours.")
        Double mealsPerDay,
    @Quantity(
            unit = "Cel",
            low = 5,
            high = 45,
            meaning = "Liquor temperature up to which the tank is warmed; for tank heating.")
        Double setPointC,
    @Quantity(
            unit = "1",
            low = 0.1,
            high = 1,
            meaning = "Share of the burned gas that warms the liquor; for tank heating.",
            usual = "digester.default.heating-efficiency")
        Double heatingEfficiency) {}
