package org.marshlight.evidence;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;
import org.marshlight.contract.Meaning;

/**
 * One item of a catalogue, for instance a feed, with its numbers by name.
 *
 * @param values its coefficients, each under its name without the prefix {@code <catalogue>.<id>.}
 */
@Meaning("One item of a catalogue, with its numbers by name.")
public record CatalogueItem(
    @NotNull @Meaning("Stable id, used in plans.") @Size(max = 100) String id,
    @NotNull @Meaning("Plain name.") @Size(max = 200) String name,
    @NotNull @Meaning("Sort of item within its catalogue.") @Size(max = 100) String kind,
    @NotNull @Meaning("Id of the source of the item.") @Size(max = 100) String source,
    @NotNull @Meaning("How well founded the item is as a whole.") @Size(max = 40) String mark,
    @NotNull @Meaning("What it is.") @Size(max = 2000) String note,
    @Meaning("Its coefficients by short name.") Map<String, CoefficientRow> values) {}
