package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What a figure must come to; of twelve months, every month.
 *
 * @param atLeast least value
 * @param atMost greatest value
 */
@Meaning("What a figure must come to; of twelve months, every month.")
public record Target(
    @NotNull
        @Size(max = 400)
        @Meaning(
            "Name of a headline or pointer into an estimate; of twelve months, the worst counts.")
        String figure,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "Least value, in the unit of the figure; exactly one of the two.")
        Double atLeast,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "Greatest value, in the unit of the figure; exactly one of the two.")
        Double atMost) {}
