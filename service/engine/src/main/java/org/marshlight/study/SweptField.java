package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * A number of the plan to be swept: over stated values, or over a range in equal steps.
 *
 * @param values the values; exactly one of values and range
 * @param from first value of the range
 * @param to last value of the range
 */
@Meaning("A number of the plan to be swept: over stated values, or over a range in equal steps.")
public record SweptField(
    @NotNull @Size(max = 400) @Meaning("RFC 6901 pointer to it, from the plan's root.")
        String pointer,
    @Size(min = 1, max = 500)
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "The values, in the unit of the field; exactly one of values and range.")
        List<Double> values,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "First value of the range, in the unit of the field.")
        Double from,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "Last value of the range, in the unit of the field.")
        Double to,
    @Quantity(
            unit = "1",
            min = 2,
            max = 500,
            meaning = "How many values the range has, both ends counted.")
        Integer points) {}
