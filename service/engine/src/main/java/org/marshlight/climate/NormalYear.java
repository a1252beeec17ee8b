package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/** Makes an hourly year from monthly normals, in true solar time. */
final class NormalYear {

  private static final double MJ_TO_WH = 1e6 / 3600;

  private final SiteClimate site;
  private final Orbit orbit;
  private final HourlyWeather year;
  private final double[] globalShare = new double[24];
  private final double[] diffuseShare = new double[24];

  private NormalYear(SiteClimate site, Orbit orbit) {
    this.site = site;
    this.orbit = orbit;
    this.year = new HourlyWeather();
  }

  static HourlyWeather of(SiteClimate site, Orbit orbit) {
    return new NormalYear(site, orbit).make();
  }

  private HourlyWeather make() {
    double[] outside = orbit.extraterrestrialMJM2Day(site.latitudeRad());
    double[] air = MonthToDay.days(site.airC());
    double[] dewPoint = MonthToDay.days(site.dewPointC());
    double[] wave = new double[24];
    for (int hour = 0; hour < 24; hour++) {
      wave[hour] = AirTemperatureWave.departure(hour + 0.5);
    }
    int[] months = Months.monthOfDay();
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      int month = months[day];
      year.dailyAirC[day] = air[day];
      sun(day, month, outside[month]);
      airAndSky(day, month, dewPoint[day], wave);
    }
    return year;
  }

  private void sun(int day, int month, double monthOutsideMJM2Day) {
    double latitude = site.latitudeRad();
    double declination = orbit.declination(day);
    double distance = orbit.distanceFactor(day);
    double sunset = SunPosition.sunsetHourAngle(latitude, declination);
    year.declinationRad[day] = declination;
    year.dayLengthH[day] = SunPosition.daylightHours(sunset);
    if (sunset < 0.01 || monthOutsideMJM2Day <= 0 || site.clearness()[month] <= 0) {
      return;
    }
    double outside = SolarRadiation.extraterrestrialMJM2Day(latitude, declination, distance);
    double global =
        SolarRadiation.megajoules(site.solarKWhM2Day()[month]) * outside / monthOutsideMJM2Day;
    double clearness = Math.max(0, Math.min(0.8, global / outside));
    double diffuse =
        global * Math.max(0, Math.min(1, SolarRadiation.monthlyDiffuseFraction(clearness, sunset)));
    year.dailySolarMJM2[day] = global;
    spread(day, global * MJ_TO_WH, diffuse * MJ_TO_WH, declination, sunset, distance);
  }

  /** Spreads a day's radiation, Wh/m2, over its hours; an hour cut by sunrise counts in part. */
  private void spread(
      int day,
      double globalWhM2,
      double diffuseWhM2,
      double declination,
      double sunset,
      double distance) {
    double globalSum = 0;
    double diffuseSum = 0;
    double sinSin = FastMath.sin(site.latitudeRad()) * FastMath.sin(declination);
    double cosCos = FastMath.cos(site.latitudeRad()) * FastMath.cos(declination);
    for (int hour = 0; hour < 24; hour++) {
      double from = Math.max(-sunset, (hour - 12) * FastMath.PI / 12);
      double to = Math.min(sunset, (hour - 11) * FastMath.PI / 12);
      globalShare[hour] = 0;
      diffuseShare[hour] = 0;
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
      year.sunAt(index, middle);
      year.extraterrestrialWM2[index] =
          lit
              * SolarRadiation.SOLAR_CONSTANT_W_M2
              * distance
              * Math.max(0, sinSin + cosCos * year.cosHourAngle[index]);
    }
    for (int hour = 0; hour < 24; hour++) {
      double global = globalWhM2 * globalShare[hour] / globalSum;
      double diffuse = Math.min(global, diffuseWhM2 * diffuseShare[hour] / diffuseSum);
      year.beamWM2[24 * day + hour] = global - diffuse;
      year.diffuseWM2[24 * day + hour] = diffuse;
    }
  }

  private void airAndSky(int day, int month, double dewPointC, double[] wave) {
    double clearness = SkyTemperature.longWaveClearness(site.clearness()[month], site.elevationM());
    double dew = Math.min(dewPointC, year.dailyAirC[day]);
    for (int hour = 0; hour < 24; hour++) {
      int index = 24 * day + hour;
      double air = year.dailyAirC[day] + site.dailyRangeK()[month] * wave[hour];
      year.airC[index] = air;
      year.windMS[index] = site.windMS()[month];
      year.skyC[index] =
          SkyTemperature.skyTemperatureC(
              air, SkyTemperature.clearSkyEmissivity(dew, hour + 0.5), clearness);
    }
  }
}
