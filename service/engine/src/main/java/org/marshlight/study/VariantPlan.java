package org.marshlight.study;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/** A variant of a plan. */
@Meaning("A variant of a plan.")
public record VariantPlan(
    @NotNull @Size(min = 1, max = 200) @Meaning("What to call it.") String name,
    @NotNull @Meaning("The plan as it would be.") Plan plan) {}
