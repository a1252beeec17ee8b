package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * Beam and sky radiation on a plane, hour by hour: what of {@link TiltedYear} hangs on weather and
 * plane alone and not on the ground before it.
 *
 * @param plane the plane
 * @param beamWM2 beam
 * @param skyWM2 sky diffuse
 * @param cosIncidence cosine of the beam's angle of incidence; 0 where no beam meets the plane
 */
record PlaneSun(Plane plane, double[] beamWM2, double[] skyWM2, double[] cosIncidence) {

  /**
   * A plane at a place.
   *
   * @param latitudeRad north positive
   * @param horizon what stands before the sun
   * @param tiltRad slope from the horizontal
   * @param westOfSouthRad way the plane faces
   */
  record Plane(double latitudeRad, Horizon horizon, double tiltRad, double westOfSouthRad) {}

  static PlaneSun of(Plane plane, HourlyWeather year) {
    PlaneSun sun =
        new PlaneSun(
            plane,
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS]);
    double cosTilt = FastMath.cos(plane.tiltRad);
    double sinHalfTilt = FastMath.sin(plane.tiltRad / 2);
    double skyShare = plane.horizon.skyShare();
    TiltedPlane angles = new TiltedPlane(plane.latitudeRad, plane.tiltRad, plane.westOfSouthRad);
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      angles.day(year.declinationRad[day]);
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        double beam = year.beamWM2[hour];
        double diffuse = year.diffuseWM2[hour];
        double outside = year.extraterrestrialWM2[hour];
        if (beam + diffuse <= 0 || outside <= 0) {
          continue;
        }
        angles.hour(year.cosHourAngle[hour], year.sinHourAngle[hour]);
        double cosZenith = angles.cosZenith();
        boolean seen =
            plane.horizon.shows(
                plane.latitudeRad, year.declinationRad[day], year.hourAngleRad[hour], cosZenith);
        double ratio = seen && cosZenith > 0 ? angles.cosIncidence() / cosZenith : 0;
        sun.beamWM2[hour] = beam * ratio;
        sun.skyWM2[hour] =
            skyShare
                * SolarRadiation.skyDiffuse(
                    seen ? beam : 0, diffuse, outside, ratio, cosTilt, sinHalfTilt);
        sun.cosIncidence[hour] = seen ? angles.cosIncidence() : 0;
      }
    }
    return sun;
  }
}
