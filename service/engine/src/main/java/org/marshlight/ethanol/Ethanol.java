package org.marshlight.ethanol;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the ethanol package adds to the books. */
public final class Ethanol implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(
        Fermentation.class,
        Alcoholometry.class,
        EthanolWaterEquilibrium.class,
        Rayleigh.class,
        McCabeThiele.class,
        DistillingHeat.class,
        FuelProperties.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(
        EthanolCoefficients.class,
        Saccharification.class,
        Additive.class,
        HeatSource.class,
        FuelContent.class,
        LiquidFuel.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("fuels", "additives");
  }
}
