package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;

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

  static TiltedYear of(ClimateYear year, double tiltRad, double westOfSouthRad) {
    TiltedYear tilted =
        new TiltedYear(
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS],
            new double[ClimateYear.HOURS]);
    double latitude = year.site().latitudeRad();
    double groundView = year.site().groundReflectance() * (1 - FastMath.cos(tiltRad)) / 2;
    for (int hour = 0; hour < ClimateYear.HOURS; hour++) {
      double beam = year.beamWM2()[hour];
      double diffuse = year.diffuseWM2()[hour];
      double outside = year.extraterrestrialWM2()[hour];
      if (beam + diffuse <= 0 || outside <= 0) {
        continue;
      }
      double declination = year.declinationRad()[hour / 24];
      double hourAngle = year.hourAngleRad()[hour];
      double cosZenith = SunPosition.cosZenith(latitude, declination, hourAngle);
      double cosIncidence =
          Math.max(
              0,
              SunPosition.cosIncidence(latitude, declination, hourAngle, tiltRad, westOfSouthRad));
      double ratio = cosIncidence / cosZenith;
      tilted.beamWM2[hour] = beam * ratio;
      tilted.skyWM2[hour] = SolarRadiation.tiltedSkyDiffuse(beam, diffuse, outside, ratio, tiltRad);
      tilted.groundWM2[hour] = groundView * (beam + diffuse);
      tilted.cosIncidence[hour] = cosIncidence;
    }
    return tilted;
  }
}
