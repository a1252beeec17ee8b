package org.marshlight.loop;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * One flow of one quantity between two processes, or across the border of the loop.
 *
 * @param perYear how much in a year
 * @param humanOrigin whether it holds human waste or what grew on it; gas, vapour and distillate
 *     hold none
 */
@Meaning("One flow of one quantity between two processes, or across the border of the loop.")
public record Flow(
    @NotNull @Meaning("What flows.") @Size(max = 40) String quantity,
    @NotNull @Meaning("Where it comes from.") @Size(max = 60) String from,
    @NotNull @Meaning("Where it goes.") @Size(max = 60) String to,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Amount in a year.")
        double perYear,
    @NotNull @Meaning("UCUM code.") @Size(max = 20) String unit,
    @Meaning(
            "Whether it holds human waste or what grew on it, and so is never cleared for food"
                + " eaten raw; gas, vapour and distillate hold none.")
        boolean humanOrigin) {}
