package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.economy.PlanPart;

/**
 * An amount of one material that the geometry of a plan asks for. It is no structural design:
 * strength, footings, pipes and safety glass are the work of licensed practice.
 */
@Meaning("An amount of one material by geometry alone: no structural design.")
public record MaterialNeeded(
    @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
    @NotNull @Meaning("What it is.") @Size(max = 200) String text,
    @NotNull @Meaning("Part of the plan.") PlanPart part,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "How much, allowance included.")
        double amount,
    @NotNull @Meaning("UCUM code of the amount.") @Size(max = 20) String unit,
    @Quantity(unit = "1", min = 0, max = 1, meaning = "What is added to the geometry.")
        double allowanceFraction,
    @NotNull @Meaning("What the amount is taken from.") @Size(max = 300) String basis,
    @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Energy of making it.")
        double embodiedKWh) {}
