package org.marshlight.http.formulas;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.marshlight.contract.Meaning;

/**
 * What a formula is to be worked for.
 *
 * @param inputs a value for each parameter of the formula, by name
 */
@Meaning("What a formula is to be worked for.")
public record FormulaRequest(
    @NotNull
        @Meaning("A value for each parameter of the formula, by name, in the unit of each.")
        @Size(max = 20)
        Map<String, Double> inputs) {}
