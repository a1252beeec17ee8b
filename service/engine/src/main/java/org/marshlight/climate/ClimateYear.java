package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * The hourly year made from a site's monthly climate, in true solar time: every hour of 365 days
 * about its middle. Arrays are handed out without copying and must not be changed.
 */
public final class ClimateYear {

  /** Hours of the year. */
  public static final int HOURS = 8760;

  private final SiteClimate site;
  private final double[] airC = new double[HOURS];
  private final double[] skyC = new double[HOURS];
  private final double[] beamWM2 = new double[HOURS];
  private final double[] diffuseWM2 = new double[HOURS];
  private final double[] extraterrestrialWM2 = new double[HOURS];
  private final double[] hourAngleRad = new double[HOURS];
  private final double[] declinationRad = new double[Months.DAYS_PER_YEAR];
  private final double[] dailyAirC;
  private final double[] dailySolarMJM2 = new double[Months.DAYS_PER_YEAR];
  private final double[] dayLengthH = new double[Months.DAYS_PER_YEAR];

  private ClimateYear(SiteClimate site) {
    this.site = site;
    this.dailyAirC = MonthToDay.days(site.airC());
  }

  /** Makes the year of a site. */
  public static ClimateYear of(SiteClimate site) {
    ClimateYear year = new ClimateYear(site);
    double[] outside = ClimateModel.extraterrestrialMJM2Day(site.latitudeRad());
    double[] dewPoint = MonthToDay.days(site.dewPointC());
    double[] wave = new double[24];
    for (int hour = 0; hour < 24; hour++) {
      wave[hour] = AirTemperatureWave.departure(hour + 0.5);
    }
    int[] months = Months.monthOfDay();
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      year.sun(day, months[day], outside[months[day]]);
      year.airAndSky(day, months[day], dewPoint[day], wave);
    }
    return year;
  }

  private void sun(int day, int month, double monthOutsideMJM2Day) {
    double latitude = site.latitudeRad();
    double declination = SunPosition.declination(day + 1);
    double distance = SunPosition.distanceFactor(day + 1);
    double sunset = SunPosition.sunsetHourAngle(latitude, declination);
    declinationRad[day] = declination;
    dayLengthH[day] = SunPosition.daylightHours(sunset);
    if (sunset < 0.01 || monthOutsideMJM2Day <= 0 || site.clearness()[month] <= 0) {
      return;
    }
    double outside = SolarRadiation.extraterrestrialMJM2Day(latitude, declination, distance);
    double global =
        SolarRadiation.megajoules(site.solarKWhM2Day()[month]) * outside / monthOutsideMJM2Day;
    double clearness = Math.max(0, Math.min(0.8, global / outside));
    double diffuse =
        global * Math.max(0, Math.min(1, SolarRadiation.monthlyDiffuseFraction(clearness, sunset)));
    dailySolarMJM2[day] = global;
    spread(day, global * 1e6 / 3600, diffuse * 1e6 / 3600, declination, sunset, distance);
  }

  /** Spreads a day's radiation, Wh/m2, over its hours; an hour cut by sunrise counts in part. */
  private void spread(
      int day,
      double globalWhM2,
      double diffuseWhM2,
      double declination,
      double sunset,
      double distance) {
    double[] globalShare = new double[24];
    double[] diffuseShare = new double[24];
    double globalSum = 0;
    double diffuseSum = 0;
    for (int hour = 0; hour < 24; hour++) {
      double from = Math.max(-sunset, (hour - 12) * FastMath.PI / 12);
      double to = Math.min(sunset, (hour - 11) * FastMath.PI / 12);
      if (to <= from) {
        continue;
      }
      double middle = (from + to) / 2;
      double lit = (to - from) * 12 / FastMath.PI;
      globalShare[hour] = lit * Math.max(0, SolarRadiation.hourlyGlobalShare(middle, sunset));
      diffuseShare[hour] = lit * Math.max(0, SolarRadiation.hourlyDiffuseShare(middle, sunset));
      globalSum += globalShare[hour];
      diffuseSum += diffuseShare[hour];
      int index = 24 * day + hour;
      hourAngleRad[index] = middle;
      extraterrestrialWM2[index] =
          lit
              * SolarRadiation.SOLAR_CONSTANT_W_M2
              * distance
              * Math.max(0, SunPosition.cosZenith(site.latitudeRad(), declination, middle));
    }
    for (int hour = 0; hour < 24; hour++) {
      double global = globalWhM2 * globalShare[hour] / globalSum;
      double diffuse = Math.min(global, diffuseWhM2 * diffuseShare[hour] / diffuseSum);
      beamWM2[24 * day + hour] = global - diffuse;
      diffuseWM2[24 * day + hour] = diffuse;
    }
  }

  private void airAndSky(int day, int month, double dewPointC, double[] wave) {
    double clearness = SkyTemperature.longWaveClearness(site.clearness()[month], site.elevationM());
    double dew = Math.min(dewPointC, dailyAirC[day]);
    for (int hour = 0; hour < 24; hour++) {
      double air = dailyAirC[day] + site.dailyRangeK()[month] * wave[hour];
      airC[24 * day + hour] = air;
      skyC[24 * day + hour] =
          SkyTemperature.skyTemperatureC(
              air, SkyTemperature.clearSkyEmissivity(dew, hour + 0.5), clearness);
    }
  }

  /**
   * Radiation on a plane through the year.
   *
   * @param tiltDeg slope from the horizontal, 0 to 90
   * @param azimuthDeg way the plane faces, clockwise from true north
   */
  public TiltedYear tilted(double tiltDeg, double azimuthDeg) {
    return TiltedYear.of(this, FastMath.toRadians(tiltDeg), FastMath.toRadians(azimuthDeg - 180));
  }

  /** The monthly climate behind the year. */
  public SiteClimate site() {
    return site;
  }

  /** Air temperature of each hour, Cel. */
  public double[] airC() {
    return airC;
  }

  /** Temperature of the sky in each hour, Cel. */
  public double[] skyC() {
    return skyC;
  }

  /** Beam radiation on the horizontal, W/m2. */
  public double[] beamWM2() {
    return beamWM2;
  }

  /** Sky diffuse radiation on the horizontal, W/m2. */
  public double[] diffuseWM2() {
    return diffuseWM2;
  }

  /** Radiation on the horizontal outside the atmosphere, W/m2. */
  public double[] extraterrestrialWM2() {
    return extraterrestrialWM2;
  }

  /** Hour angle in the middle of the sunlit part of each hour, rad. */
  public double[] hourAngleRad() {
    return hourAngleRad;
  }

  /** Declination of each day, rad. */
  public double[] declinationRad() {
    return declinationRad;
  }

  /** Mean air temperature of each day, Cel. */
  public double[] dailyAirC() {
    return dailyAirC;
  }

  /** Global radiation of each day, MJ/m2. */
  public double[] dailySolarMJM2() {
    return dailySolarMJM2;
  }

  /** Hours between sunrise and sunset of each day. */
  public double[] dayLengthH() {
    return dayLengthH;
  }
}
