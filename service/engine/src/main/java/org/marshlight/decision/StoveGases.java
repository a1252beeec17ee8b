package org.marshlight.decision;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/**
 * Gases beside carbon dioxide that a fuel gives off in a household stove, for each kWh of net
 * heating value.
 */
@CatalogueRow("fuels")
public record StoveGases(
    @Coefficient("stove-methane") double methaneKgKWh,
    @Coefficient("stove-nitrous-oxide") double nitrousOxideKgKWh) {}
