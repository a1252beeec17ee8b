package org.marshlight.compost;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** An ingredient brought to the heap. */
@Meaning("An ingredient brought to the heap.")
public record IngredientDesign(
    @NotNull
        @Meaning("Id of an ingredient of the catalogue.")
        @CatalogueId("ingredients")
        @Size(max = 60)
        String ingredient,
    @NotNull @Quantity(unit = "kg/a", min = 0, max = 1e6, meaning = "Fresh mass a year.")
        Double freshKgPerYear,
    @Meaning(
            "Whether it holds human waste or grew on it; if not given, yes for what only a loop"
                + " like this one gives (sludge, stillage, tops and organs of beds) and no for all"
                + " else.")
        Boolean humanOrigin) {}
