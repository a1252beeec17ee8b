package org.marshlight.climate;

import java.util.Arrays;

/**
 * A site's climate month by month, complete: what a plan left out has been filled.
 *
 * @param latitudeRad north positive
 * @param elevationM above sea level
 * @param soil soil about tank and beds
 * @param airC mean air temperature
 * @param dailyRangeK highest minus lowest temperature of the mean day
 * @param dewPointC mean dew point, never above the air's temperature
 * @param windMS wind at 10 m
 * @param rainMm rain in the month
 * @param solarKWhM2Day global radiation on the horizontal
 * @param clearness global radiation over that outside the atmosphere; 0 in polar night
 * @param referenceEtMmDay reference evapotranspiration
 * @param ground wave of the ground's surface temperature
 * @param groundReflectance share of sunlight that the ground throws back, by month
 * @param horizonRad height of what stands before the sun in sectors from true north, clockwise;
 *     empty if nothing does
 */
public record SiteClimate(
    double latitudeRad,
    double elevationM,
    SoilProperties soil,
    double[] airC,
    double[] dailyRangeK,
    double[] dewPointC,
    double[] windMS,
    double[] rainMm,
    double[] solarKWhM2Day,
    double[] clearness,
    double[] referenceEtMmDay,
    GroundSurface ground,
    double[] groundReflectance,
    double[] horizonRad) {

  /**
   * Whether another site's normals make the same air and the same sun; what is below may differ.
   */
  boolean hasAirAndSunOf(SiteClimate other) {
    return latitudeRad == other.latitudeRad
        && elevationM == other.elevationM
        && Arrays.equals(airC, other.airC)
        && Arrays.equals(dailyRangeK, other.dailyRangeK)
        && Arrays.equals(dewPointC, other.dewPointC)
        && Arrays.equals(windMS, other.windMS)
        && Arrays.equals(solarKWhM2Day, other.solarKWhM2Day)
        && Arrays.equals(clearness, other.clearness);
  }

  /** Depth at which the year's swing in this soil is down to 1/e, m. */
  public double dampingDepthM() {
    return GroundTemperature.dampingDepthM(soil.diffusivityM2S());
  }
}
