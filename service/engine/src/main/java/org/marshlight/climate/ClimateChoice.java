package org.marshlight.climate;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;

/**
 * The climate of a site: exactly one of the two.
 *
 * @param id id of a built-in climate
 * @param monthly twelve normals of each quantity
 */
@Meaning("The climate of a site: a built-in one by id, or twelve monthly normals.")
public record ClimateChoice(
    @Meaning("Id of a built-in climate.") @CatalogueId("climates") @Size(max = 60) String id,
    @Valid @Meaning("Twelve normals of each quantity.") MonthlyNormals monthly) {}
