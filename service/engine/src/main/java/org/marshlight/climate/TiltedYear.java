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

  static TiltedYear of(
      SiteClimate site,
      HourlyWeather year,
      Horizon horizon,
      double tiltRad,
      double westOfSouthRad) {
    TiltedYear tilted =
        new TiltedYear(
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS]);
    TiltedPlane plane = new TiltedPlane(site.latitudeRad(), tiltRad, westOfSouthRad);
    double cosTilt = FastMath.cos(tiltRad);
    double sinHalfTilt = FastMath.sin(tiltRad / 2);
    double groundView = (1 - cosTilt) / 2;
    double skyShare = horizon.skyShare();
    int[] months = Months.monthOfDay();
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      double reflected = groundView * site.groundReflectance()[months[day]];
      plane.day(year.declinationRad[day]);
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        double beam = year.beamWM2[hour];
        double diffuse = year.diffuseWM2[hour];
        double outside = year.extraterrestrialWM2[hour];
        if (beam + diffuse <= 0 || outside <= 0) {
          continue;
        }
        plane.hour(year.cosHourAngle[hour], year.sinHourAngle[hour]);
        double cosZenith = plane.cosZenith();
        boolean seen =
            horizon.shows(
                site.latitudeRad(), year.declinationRad[day], year.hourAngleRad[hour], cosZenith);
        double ratio = seen && cosZenith > 0 ? plane.cosIncidence() / cosZenith : 0;
        tilted.beamWM2[hour] = beam * ratio;
        tilted.skyWM2[hour] =
            skyShare
                * SolarRadiation.skyDiffuse(
                    seen ? beam : 0, diffuse, outside, ratio, cosTilt, sinHalfTilt);
        tilted.groundWM2[hour] = reflected * (beam + diffuse);
        tilted.cosIncidence[hour] = seen ? plane.cosIncidence() : 0;
      }
    }
    return tilted;
  }

  /** All radiation on the plane in an hour, W/m2. */
  public double totalWM2(int hour) {
    return beamWM2[hour] + skyWM2[hour] + groundWM2[hour];
  }
}
