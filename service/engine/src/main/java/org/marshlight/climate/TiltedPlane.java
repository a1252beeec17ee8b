package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;

/**
 * The angles of {@link SunPosition#cosZenith} and {@link SunPosition#cosIncidence} for one plane,
 * with what hangs on plane and day alone worked out once.
 */
final class TiltedPlane {

  private final double sinLatitude;
  private final double cosLatitude;
  private final double declinationFactor;
  private final double cosineFactor;
  private final double sineFactor;

  private double dayConstant;
  private double dayCosine;
  private double daySine;
  private double zenithConstant;
  private double zenithCosine;
  private double cosZenith;
  private double cosIncidence;

  TiltedPlane(double latitudeRad, double tiltRad, double westOfSouthRad) {
    sinLatitude = FastMath.sin(latitudeRad);
    cosLatitude = FastMath.cos(latitudeRad);
    double sinTilt = FastMath.sin(tiltRad);
    double cosTilt = FastMath.cos(tiltRad);
    double cosAzimuth = FastMath.cos(westOfSouthRad);
    declinationFactor = sinLatitude * cosTilt - cosLatitude * sinTilt * cosAzimuth;
    cosineFactor = cosLatitude * cosTilt + sinLatitude * sinTilt * cosAzimuth;
    sineFactor = sinTilt * FastMath.sin(westOfSouthRad);
  }

  void day(double declinationRad) {
    double sine = FastMath.sin(declinationRad);
    double cosine = FastMath.cos(declinationRad);
    dayConstant = sine * declinationFactor;
    dayCosine = cosine * cosineFactor;
    daySine = cosine * sineFactor;
    zenithConstant = sine * sinLatitude;
    zenithCosine = cosine * cosLatitude;
  }

  void hour(double cosHourAngle, double sinHourAngle) {
    cosZenith = zenithConstant + zenithCosine * cosHourAngle;
    cosIncidence = Math.max(0, dayConstant + dayCosine * cosHourAngle + daySine * sinHourAngle);
  }

  double cosZenith() {
    return cosZenith;
  }

  /** Nought where the sun stands behind the plane. */
  double cosIncidence() {
    return cosIncidence;
  }
}
