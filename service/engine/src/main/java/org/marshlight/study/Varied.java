package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;
import org.marshlight.evidence.Distribution;

/**
 * A number of the plan that is uncertain, or a coefficient with another range than the book's.
 *
 * @param low about its tenth percentile
 * @param high about its ninetieth percentile
 * @param distribution how it spreads between
 */
@Meaning("A number of the plan that is uncertain, or a coefficient with another range.")
public record Varied(
    @NotNull @Size(max = 400) @Meaning("RFC 6901 pointer to it, from the plan's root.")
        String pointer,
    @NotNull
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "About its tenth percentile, in the unit of the field.")
        Double low,
    @NotNull
        @Quantity(
            unit = Quantity.UNIT_BESIDE,
            min = -1e15,
            max = 1e15,
            meaning = "About its ninetieth percentile, in the unit of the field.")
        Double high,
    @Meaning("How it spreads.") @Usual("triangular") Distribution distribution) {}
