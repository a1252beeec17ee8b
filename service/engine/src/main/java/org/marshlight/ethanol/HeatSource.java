package org.marshlight.ethanol;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/**
 * What a fuel gives where it is burnt, for each item of the catalogue of fuels.
 *
 * @param processEfficiency heat delivered to a mash or still over net heating value
 * @param stoveEfficiency heat delivered to a cooking pot over net heating value
 * @param carbonDioxideKgKWh carbon dioxide of fossil origin for each kWh of net heating value
 */
@CatalogueRow("fuels")
public record HeatSource(
    @Coefficient("process-efficiency") double processEfficiency,
    @Coefficient("stove-efficiency") double stoveEfficiency,
    @Coefficient("carbon-dioxide") double carbonDioxideKgKWh) {}
