package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Where the sun stands: day of the year, latitude and hour angle to angles. */
public final class SunPosition {

  private static final double HALF_TURN = FastMath.PI;

  private SunPosition() {}

  /** Angle of the earth on its way round the sun, rad; day 1 = 1 January. */
  private static double dayAngle(double day) {
    return 2 * FastMath.PI * (day - 1) / 365;
  }

  /** Declination by Spencer's series; within 0.04 deg of an ephemeris. */
  @Formula(
      id = "climate.declination",
      symbol = "delta",
      expression =
          "0.006918 - 0.399912 cos B + 0.070257 sin B - 0.006758 cos 2B + 0.000907 sin 2B"
              + " - 0.002697 cos 3B + 0.00148 sin 3B; B = 2 pi (n - 1) / 365",
      unit = "rad",
      meaning = "Declination of the sun.",
      source = "spencer-1971")
  public static double declination(
      @Argument(symbol = "n", unit = "d", min = 1, max = 366) double dayOfYear) {
    double b = dayAngle(dayOfYear);
    return 0.006918
        - 0.399912 * FastMath.cos(b)
        + 0.070257 * FastMath.sin(b)
        - 0.006758 * FastMath.cos(2 * b)
        + 0.000907 * FastMath.sin(2 * b)
        - 0.002697 * FastMath.cos(3 * b)
        + 0.00148 * FastMath.sin(3 * b);
  }

  /** Square of mean over actual distance to the sun, by Spencer's series. */
  @Formula(
      id = "climate.distance-factor",
      symbol = "d_r",
      expression =
          "1.000110 + 0.034221 cos B + 0.001280 sin B + 0.000719 cos 2B + 0.000077 sin 2B;"
              + " B = 2 pi (n - 1) / 365",
      unit = "1",
      meaning = "Radiation outside the atmosphere over its mean, from the distance to the sun.",
      source = "spencer-1971")
  public static double distanceFactor(
      @Argument(symbol = "n", unit = "d", min = 1, max = 366) double dayOfYear) {
    double b = dayAngle(dayOfYear);
    return 1.000110
        + 0.034221 * FastMath.cos(b)
        + 0.001280 * FastMath.sin(b)
        + 0.000719 * FastMath.cos(2 * b)
        + 0.000077 * FastMath.sin(2 * b);
  }

  /** Sundial time minus mean solar time, by Spencer's series. */
  @Formula(
      id = "climate.equation-of-time",
      symbol = "E",
      expression =
          "229.18 (0.000075 + 0.001868 cos B - 0.032077 sin B - 0.014615 cos 2B"
              + " - 0.04089 sin 2B); B = 2 pi (n - 1) / 365",
      unit = "min",
      meaning = "True solar time minus mean solar time.",
      source = "spencer-1971")
  public static double equationOfTimeMin(
      @Argument(symbol = "n", unit = "d", min = 1, max = 366) double dayOfYear) {
    double b = dayAngle(dayOfYear);
    return 229.18
        * (0.000075
            + 0.001868 * FastMath.cos(b)
            - 0.032077 * FastMath.sin(b)
            - 0.014615 * FastMath.cos(2 * b)
            - 0.04089 * FastMath.sin(2 * b));
  }

  /** Hour angle at which the sun sets; nought in polar night, half a turn in polar day. */
  @Formula(
      id = "climate.sunset-hour-angle",
      symbol = "omega_s",
      expression = "arccos(-tan phi tan delta), the argument held to -1 to 1",
      unit = "rad",
      meaning = "Hour angle at which the sun sets.",
      source = "fao56",
      equation = "25")
  public static double sunsetHourAngle(
      @Argument(symbol = "phi", unit = "rad", min = -1.5708, max = 1.5708) double latitudeRad,
      @Argument(symbol = "delta", unit = "rad", min = -0.42, max = 0.42) double declinationRad) {
    double cosine = -FastMath.tan(latitudeRad) * FastMath.tan(declinationRad);
    return FastMath.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** Hours between sunrise and sunset. */
  @Formula(
      id = "climate.daylight-hours",
      symbol = "N",
      expression = "24 omega_s / pi",
      unit = "h",
      meaning = "Hours between sunrise and sunset.",
      source = "fao56",
      equation = "34")
  public static double daylightHours(
      @Argument(symbol = "omega_s", unit = "rad", min = 0, max = 3.1416)
          double sunsetHourAngleRad) {
    return 24 * sunsetHourAngleRad / HALF_TURN;
  }

  /** Cosine of the sun's distance from the zenith. */
  @Formula(
      id = "climate.cos-zenith",
      symbol = "cos theta_z",
      expression = "cos phi cos delta cos omega + sin phi sin delta",
      unit = "1",
      meaning = "Cosine of the sun's zenith angle.",
      source = "duffie-beckman",
      equation = "1.6.5")
  public static double cosZenith(
      @Argument(symbol = "phi", unit = "rad", min = -1.5708, max = 1.5708) double latitudeRad,
      @Argument(symbol = "delta", unit = "rad", min = -0.42, max = 0.42) double declinationRad,
      @Argument(symbol = "omega", unit = "rad", min = -3.1416, max = 3.1416) double hourAngleRad) {
    return FastMath.cos(latitudeRad) * FastMath.cos(declinationRad) * FastMath.cos(hourAngleRad)
        + FastMath.sin(latitudeRad) * FastMath.sin(declinationRad);
  }

  /** Cosine of the angle at which the beam meets a plane. */
  @Formula(
      id = "climate.cos-incidence",
      symbol = "cos theta",
      expression =
          "sin delta (sin phi cos beta - cos phi sin beta cos gamma)"
              + " + cos delta cos omega (cos phi cos beta + sin phi sin beta cos gamma)"
              + " + cos delta sin beta sin gamma sin omega",
      unit = "1",
      meaning = "Cosine of the angle between beam and the normal of a plane.",
      source = "duffie-beckman",
      equation = "1.6.2")
  public static double cosIncidence(
      @Argument(symbol = "phi", unit = "rad", min = -1.5708, max = 1.5708) double latitudeRad,
      @Argument(symbol = "delta", unit = "rad", min = -0.42, max = 0.42) double declinationRad,
      @Argument(symbol = "omega", unit = "rad", min = -3.1416, max = 3.1416) double hourAngleRad,
      @Argument(symbol = "beta", unit = "rad", min = 0, max = 3.1416) double tiltRad,
      @Argument(symbol = "gamma", unit = "rad", min = -6.2832, max = 6.2832)
          double westOfSouthRad) {
    double sinPhi = FastMath.sin(latitudeRad);
    double cosPhi = FastMath.cos(latitudeRad);
    double sinBeta = FastMath.sin(tiltRad);
    double cosBeta = FastMath.cos(tiltRad);
    double cosGamma = FastMath.cos(westOfSouthRad);
    double cosDelta = FastMath.cos(declinationRad);
    return FastMath.sin(declinationRad) * (sinPhi * cosBeta - cosPhi * sinBeta * cosGamma)
        + cosDelta * FastMath.cos(hourAngleRad) * (cosPhi * cosBeta + sinPhi * sinBeta * cosGamma)
        + cosDelta * sinBeta * FastMath.sin(westOfSouthRad) * FastMath.sin(hourAngleRad);
  }
}
