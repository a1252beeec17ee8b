package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Two uncertain numbers that go together.
 *
 * @param first pointer to one, from the plan's root; a coefficient is under {@code /coefficients}
 */
@Meaning("Two uncertain numbers that go together.")
public record Correlated(
    @NotNull @Size(max = 400) @Meaning("Pointer to one, from the plan's root.") String first,
    @NotNull @Size(max = 400) @Meaning("Pointer to the other.") String second,
    @NotNull
        @Quantity(
            unit = "1",
            min = -0.99,
            max = 0.99,
            meaning = "Spearman's rank correlation of the two.")
        Double rankCorrelation) {}
