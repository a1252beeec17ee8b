package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A number of the plan that is to be as small as it may.
 *
 * @param low least value to try
 * @param high greatest value to try
 */
@Meaning("A number of the plan that is to be as small as it may.")
public record Freed(
    @NotNull @Size(max = 400) @Meaning("RFC 6901 pointer to it, from the plan's root.")
        String pointer,
    @NotNull
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "Least value to try, in the unit of the field.")
        Double low,
    @NotNull
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "Greatest value to try, in the unit of the field.")
        Double high) {}
