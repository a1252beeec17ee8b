package org.marshlight.wetland;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the wetland package adds to the books. */
public final class Wetlands implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(
        TanksInSeries.class,
        FirstOrderDetention.class,
        SizingRules.class,
        BedHydraulics.class,
        WaterBalance.class,
        WaterTemperature.class,
        NitrogenLimits.class,
        Salinity.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(
        WetlandCoefficients.class,
        SizingCoefficients.class,
        UseLimits.class,
        SaltCoefficients.class,
        BedKindRates.class,
        Medium.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("media", "bed-kinds");
  }
}
