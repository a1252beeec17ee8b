package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Radiation of the sun: outside the atmosphere, split, through the day and on a tilted plane. */
public final class SolarRadiation {

  /** Solar constant, W/m2, as used with the diffuse correlations (Duffie and Beckman). */
  public static final double SOLAR_CONSTANT_W_M2 = 1367;

  /** Joules in a kilowatt hour, in MJ. */
  private static final double MJ_PER_KWH = 3.6;

  private SolarRadiation() {}

  /** Daily radiation on the horizontal outside the atmosphere, FAO-56 equation 21. */
  @Formula(
      id = "climate.extraterrestrial-radiation",
      symbol = "R_a",
      expression =
          "(24 60 / pi) G_sc d_r (omega_s sin phi sin delta + cos phi cos delta sin omega_s);"
              + " G_sc = 0.0820 MJ m-2 min-1",
      unit = "MJ/(m2.d)",
      meaning = "Daily radiation on the horizontal outside the atmosphere.",
      source = "fao56",
      equation = "21")
  public static double extraterrestrialMJM2Day(
      @Argument(symbol = "phi", unit = "rad", min = -1.5708, max = 1.5708) double latitudeRad,
      @Argument(symbol = "delta", unit = "rad", min = -0.42, max = 0.42) double declinationRad,
      @Argument(symbol = "d_r", unit = "1", min = 0.9, max = 1.1) double distanceFactor) {
    double sunset = SunPosition.sunsetHourAngle(latitudeRad, declinationRad);
    return 24
        * 60
        / FastMath.PI
        * 0.0820
        * distanceFactor
        * (sunset * FastMath.sin(latitudeRad) * FastMath.sin(declinationRad)
            + FastMath.cos(latitudeRad) * FastMath.cos(declinationRad) * FastMath.sin(sunset));
  }

  /** Clear-sky radiation, FAO-56 equation 37. */
  @Formula(
      id = "climate.clear-sky-radiation",
      symbol = "R_so",
      expression = "(0.75 + 2e-5 z) R_a",
      unit = "MJ/(m2.d)",
      meaning = "Daily radiation on the horizontal under a clear sky.",
      source = "fao56",
      equation = "37")
  public static double clearSkyMJM2Day(
      @Argument(symbol = "z", unit = "m", min = -430, max = 6000) double elevationM,
      @Argument(symbol = "R_a", unit = "MJ/(m2.d)", min = 0, max = 60) double extraterrestrial) {
    return (0.75 + 2e-5 * elevationM) * extraterrestrial;
  }

  /** Radiation from hours of sunshine, FAO-56 equation 35. */
  @Formula(
      id = "climate.radiation-of-sunshine",
      symbol = "R_s",
      expression = "(0.25 + 0.50 n / N) R_a",
      unit = "MJ/(m2.d)",
      meaning = "Daily radiation on the horizontal from hours of sunshine.",
      source = "fao56",
      equation = "35")
  public static double ofSunshineMJM2Day(
      @Argument(symbol = "n", unit = "h", min = 0, max = 24) double sunshineHours,
      @Argument(symbol = "N", unit = "h", min = 0.01, max = 24) double daylightHours,
      @Argument(symbol = "R_a", unit = "MJ/(m2.d)", min = 0, max = 60) double extraterrestrial) {
    return (0.25 + 0.50 * sunshineHours / daylightHours) * extraterrestrial;
  }

  /** Radiation from the daily range of temperature, Hargreaves and Samani. */
  @Formula(
      id = "climate.radiation-of-range",
      symbol = "R_s",
      expression = "k_Rs sqrt(T_max - T_min) R_a",
      unit = "MJ/(m2.d)",
      meaning = "Daily radiation on the horizontal from the daily range of temperature.",
      source = "fao56",
      equation = "50")
  public static double ofRangeMJM2Day(
      @Argument(symbol = "k_Rs", unit = "{K^-0.5}", min = 0.05, max = 0.3) double coefficient,
      @Argument(symbol = "T_max - T_min", unit = "K", min = 0, max = 40) double rangeK,
      @Argument(symbol = "R_a", unit = "MJ/(m2.d)", min = 0, max = 60) double extraterrestrial) {
    return coefficient * Math.sqrt(rangeK) * extraterrestrial;
  }

  /** Share of diffuse in monthly mean radiation; valid for a clearness of 0.3 to 0.8. */
  @Formula(
      id = "climate.monthly-diffuse-fraction",
      symbol = "H_d/H",
      expression =
          "omega_s <= 81.4 deg: 1.391 - 3.560 K + 4.189 K2 - 2.137 K3;"
              + " else 1.311 - 3.022 K + 3.427 K2 - 1.821 K3",
      unit = "1",
      meaning = "Diffuse over global radiation of the mean day of a month.",
      source = "erbs-1982")
  public static double monthlyDiffuseFraction(
      @Argument(symbol = "K", unit = "1", min = 0, max = 1) double clearness,
      @Argument(symbol = "omega_s", unit = "rad", min = 0, max = 3.1416)
          double sunsetHourAngleRad) {
    double k = clearness;
    return sunsetHourAngleRad <= FastMath.toRadians(81.4)
        ? 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k))
        : 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
  }

  /** Share of the day's diffuse radiation that falls in an hour about an hour angle. */
  @Formula(
      id = "climate.hourly-diffuse-share",
      symbol = "r_d",
      expression = "(pi / 24) (cos omega - cos omega_s) / (sin omega_s - omega_s cos omega_s)",
      unit = "1/h",
      meaning = "Diffuse radiation of an hour over that of its day.",
      source = "liu-jordan-1960")
  public static double hourlyDiffuseShare(
      @Argument(symbol = "omega", unit = "rad", min = -3.1416, max = 3.1416) double hourAngleRad,
      @Argument(symbol = "omega_s", unit = "rad", min = 0.01, max = 3.1416)
          double sunsetHourAngleRad) {
    double cosSunset = FastMath.cos(sunsetHourAngleRad);
    return FastMath.PI
        / 24
        * (FastMath.cos(hourAngleRad) - cosSunset)
        / (FastMath.sin(sunsetHourAngleRad) - sunsetHourAngleRad * cosSunset);
  }

  /** Share of the day's global radiation that falls in an hour about an hour angle. */
  @Formula(
      id = "climate.hourly-global-share",
      symbol = "r_t",
      expression =
          "r_d (a + b cos omega); a = 0.409 + 0.5016 sin(omega_s - 60 deg),"
              + " b = 0.6609 - 0.4767 sin(omega_s - 60 deg)",
      unit = "1/h",
      meaning = "Global radiation of an hour over that of its day.",
      source = "collares-pereira-rabl-1979")
  public static double hourlyGlobalShare(
      @Argument(symbol = "omega", unit = "rad", min = -3.1416, max = 3.1416) double hourAngleRad,
      @Argument(symbol = "omega_s", unit = "rad", min = 0.01, max = 3.1416)
          double sunsetHourAngleRad) {
    double sine = FastMath.sin(sunsetHourAngleRad - FastMath.PI / 3);
    return hourlyDiffuseShare(hourAngleRad, sunsetHourAngleRad)
        * (0.409 + 0.5016 * sine + (0.6609 - 0.4767 * sine) * FastMath.cos(hourAngleRad));
  }

  /** Radiation on a plane when sky diffuse comes evenly from everywhere. */
  @Formula(
      id = "climate.tilted-isotropic",
      symbol = "I_T",
      expression = "I_b R_b + I_d (1 + cos beta) / 2 + rho (I_b + I_d) (1 - cos beta) / 2",
      unit = "W/m2",
      meaning = "Radiation on a tilted plane, sky diffuse taken as even.",
      source = "liu-jordan-1960",
      equation = "Duffie and Beckman 2.15.1")
  public static double tiltedIsotropic(
      @Argument(symbol = "I_b", unit = "W/m2", min = 0, max = 1500) double beam,
      @Argument(symbol = "I_d", unit = "W/m2", min = 0, max = 1500) double diffuse,
      @Argument(symbol = "R_b", unit = "1", min = 0, max = 1000) double beamRatio,
      @Argument(symbol = "beta", unit = "rad", min = 0, max = 3.1416) double tiltRad,
      @Argument(symbol = "rho", unit = "1", min = 0, max = 1) double groundReflectance) {
    double cosTilt = FastMath.cos(tiltRad);
    return beam * beamRatio
        + diffuse * (1 + cosTilt) / 2
        + groundReflectance * (beam + diffuse) * (1 - cosTilt) / 2;
  }

  /** Sky diffuse on a plane by the model of Hay, Davies, Klucher and Reindl. */
  @Formula(
      id = "climate.tilted-sky-diffuse",
      symbol = "I_T,d",
      expression =
          "I_d ((1 - A_i) ((1 + cos beta) / 2) (1 + f sin3(beta / 2)) + A_i R_b);"
              + " A_i = I_b / I_o, f = sqrt(I_b / (I_b + I_d))",
      unit = "W/m2",
      meaning = "Sky diffuse on a tilted plane with brightening round the sun and at the horizon.",
      source = "reindl-1990",
      equation = "Duffie and Beckman 2.16.7")
  public static double tiltedSkyDiffuse(
      @Argument(symbol = "I_b", unit = "W/m2", min = 0, max = 1500) double beam,
      @Argument(symbol = "I_d", unit = "W/m2", min = 0, max = 1500) double diffuse,
      @Argument(symbol = "I_o", unit = "W/m2", min = 0.001, max = 1500) double extraterrestrial,
      @Argument(symbol = "R_b", unit = "1", min = 0, max = 1000) double beamRatio,
      @Argument(symbol = "beta", unit = "rad", min = 0, max = 3.1416) double tiltRad) {
    return skyDiffuse(
        beam,
        diffuse,
        extraterrestrial,
        beamRatio,
        FastMath.cos(tiltRad),
        FastMath.sin(tiltRad / 2));
  }

  /** Sky diffuse on a plane of which {@code cos beta} and {@code sin(beta / 2)} are known. */
  static double skyDiffuse(
      double beam,
      double diffuse,
      double extraterrestrial,
      double beamRatio,
      double cosTilt,
      double sinHalfTilt) {
    double anisotropy = Math.min(1, beam / extraterrestrial);
    double global = beam + diffuse;
    double modulation = global > 0 ? Math.sqrt(beam / global) : 0;
    return diffuse
        * ((1 - anisotropy)
                * (1 + cosTilt)
                / 2
                * (1 + modulation * sinHalfTilt * sinHalfTilt * sinHalfTilt)
            + anisotropy * beamRatio);
  }

  /** Megajoules of an amount in kilowatt hours. */
  static double megajoules(double kilowattHours) {
    return kilowattHours * MJ_PER_KWH;
  }
}
