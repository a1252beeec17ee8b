package org.marshlight.climate;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the climate package adds to the books. */
public final class Climate implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(
        SunPosition.class,
        SolarRadiation.class,
        ReferenceEvapotranspiration.class,
        SkyTemperature.class,
        AirTemperatureWave.class,
        GroundTemperature.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(ClimateCoefficients.class, SoilProperties.class, StationReach.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("soils");
  }
}
