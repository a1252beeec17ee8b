package org.marshlight.ethanol;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/**
 * What a fuel gives where it is burnt, for each item of the catalogue of fuels.
 *
 * @param processEfficiency heat delivered to a mash or still over net heating value
 * @param stoveEfficiency heat delivered to a cooking pot over net heating value
 * @param primaryEnergy energy taken from nature for each kWh of net heating value, or of
 *     electricity; none for heat of the sun
 * @param carbonDioxideKgKWh carbon dioxide of fossil origin for each kWh of net heating value
 */
@CatalogueRow("fuels")
public record HeatSource(
    @Coefficient("process-efficiency") double processEfficiency,
    @Coefficient("stove-efficiency") double stoveEfficiency,
    @Coefficient("primary-energy") double primaryEnergy,
    @Coefficient("carbon-dioxide") double carbonDioxideKgKWh) {

  /** Id of electricity in the catalogue of fuels. */
  public static final String ELECTRICITY = "electricity";
}
