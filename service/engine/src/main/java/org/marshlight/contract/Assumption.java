package org.marshlight.contract;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * Something an estimate took as given: a default for a field left out, or a coefficient.
 *
 * @param code {@code default} for a field left out, {@code coefficient} for a number of the
 *     coefficient book, {@code override} for one that the plan set itself
 */
@Meaning("Something an estimate took as given: a default for a field left out, or a coefficient.")
public record Assumption(
    @NotNull @Meaning("default, coefficient or override.") @Size(max = 40) String code,
    @NotNull @Meaning("Coefficient id, or the choice taken.") @Size(max = 200) String id,
    @Meaning("RFC 6901 pointer of the field left out; null for coefficients.") @Size(max = 400)
        String pointer,
    @NotNull @Meaning("What was assumed, in words.") @Size(max = 2000) String text,
    @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "The number taken; null where a choice was taken.")
        Double value,
    @Meaning("UCUM code; null where a choice was taken.") @Size(max = 40) String unit,
    @NotNull @Meaning("Id of the source.") @Size(max = 100) String source,
    @NotNull @Meaning("How well founded the number is.") @Size(max = 40) String mark) {}
