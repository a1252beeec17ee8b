package org.marshlight.decision;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import org.marshlight.contract.Meaning;
import org.marshlight.loop.Plan;

/**
 * Asks in which order the parts of a plan are best built within its budget.
 *
 * @param plan the plan; its {@code money.budget} and {@code money.owned} count
 */
@Meaning("Asks in which order the parts of a plan are best built within its budget.")
public record BuildOrderRequest(
    @NotNull @Valid @Meaning("The plan; its budget and the parts that it owns count.") Plan plan) {}
