package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What was read in one month.
 *
 * @param kind what was read
 * @param value what was read
 * @param uncertainty standard uncertainty of it
 */
@Meaning("What was read in one month.")
public record Reading(
    @NotNull @Meaning("What was read: a mean temperature in Cel, or the month's gas in m3.")
        ReadingKind kind,
    @NotNull @Quantity(unit = "1", min = 1, max = 12, meaning = "The month, 1 = January.")
        Integer month,
    @NotNull
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e6,
            max = 1e6,
            meaning = "What was read, in Cel or m3.")
        Double value,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = 1e-6,
            max = 1e6,
            meaning =
                "Standard uncertainty of it, in K or m3; that of the kind of reading if not given.")
        Double uncertainty) {}
