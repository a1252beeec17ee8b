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
            min = 0,
            max = 24,
            meaning = "Hours a day that one burner, lamp or engine runs.")
        Double hoursPerDay,
    @Quantity(
            unit = "1/d",
            min = 0,
            max = 10,
            meaning = "Meals a day cooked for everyone; for cooking, in place of hours.")
        Double mealsPerDay,
    @Quantity(
            unit = "Cel",
            min = 5,
            max = 45,
            meaning = "Liquor temperature up to which the tank is warmed; for tank heating.")
        Double setPointC,
    @Quantity(
            unit = "1",
            min = 0.1,
            max = 1,
            meaning = "Share of the burned gas that warms the liquor; for tank heating.",
            usual = "digester.default.heating-efficiency")
        Double heatingEfficiency) {}
