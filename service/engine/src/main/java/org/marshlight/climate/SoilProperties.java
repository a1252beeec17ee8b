package org.marshlight.climate;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

/**
 * A soil of the catalogue.
 *
 * @param conductivityWMK thermal conductivity, W/(m.K)
 * @param heatCapacityMJM3K heat capacity by volume, MJ/(m3.K)
 * @param acceptanceLM2Day long-term acceptance of septic-tank effluent, L/(m2.d); nought means not
 *     suitable
 */
@CatalogueRow("soils")
public record SoilProperties(
    @Coefficient("conductivity") double conductivityWMK,
    @Coefficient("heat-capacity") double heatCapacityMJM3K,
    @Coefficient("acceptance-rate") double acceptanceLM2Day) {

  /** Thermal diffusivity, m2/s. */
  public double diffusivityM2S() {
    return conductivityWMK / (heatCapacityMJM3K * 1e6);
  }
}
