package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * Radiation on a tilted plane, hour by hour. Arrays are handed out without copying and must not be
 * changed.
 *
 * @param beamWM2 beam
 * @param skyWM2 sky diffuse
 * @param groundWM2 thrown back by the ground
 * @param cosIncidence cosine of the beam's angle of incidence; 0 where no beam meets the plane
 */
public record TiltedYear(
    double[] beamWM2, double[] skyWM2, double[] groundWM2, double[] cosIncidence) {

  static TiltedYear of(SiteClimate site, HourlyWeather year, PlaneSun.Plane plane) {
    PlaneSun sun = year.on(plane);
    double[] ground = new double[ClimateYear.HOURS];
    double groundView = (1 - FastMath.cos(plane.tiltRad())) / 2;
    int[] months = Months.monthOfDay();
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      double reflected = groundView * site.groundReflectance()[months[day]];
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        if (year.extraterrestrialWM2[hour] > 0) {
          ground[hour] = reflected * Math.max(0, year.beamWM2[hour] + year.diffuseWM2[hour]);
        }
      }
    }
    return new TiltedYear(sun.beamWM2(), sun.skyWM2(), ground, sun.cosIncidence());
  }

  /** All radiation on the plane in an hour, W/m2. */
  public double totalWM2(int hour) {
    return beamWM2[hour] + skyWM2[hour] + groundWM2[hour];
  }
}
