package org.marshlight.compost;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * The compost heap, a batch a year.
 *
 * @param ingredients what is added beside the loop's own tops, stillage and sludge
 */
@Meaning("The compost heap, a batch a year.")
public record CompostDesign(
    @Size(max = 20) @Meaning("What is added beside the loop's own materials.")
        List<@NotNull @Valid IngredientDesign> ingredients,
    @Meaning("How the heap is run.") @Usual("turned-heap") CompostMethod method,
    @Quantity(
            unit = "m2",
            min = 1,
            max = 1e6,
            meaning = "Land that the compost returns to.",
            usual = "compost.default.land-area")
        Double landAreaM2) {}
