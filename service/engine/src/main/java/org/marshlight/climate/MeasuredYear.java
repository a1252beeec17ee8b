package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/** Makes the year of a site from hours of a real or typical year, in local standard time. */
final class MeasuredYear {

  private static final double RADIANS_PER_HOUR = FastMath.PI / 12;

  private final SiteClimate site;
  private final HoursDesign hours;
  private final double longitudeDeg;
  private final HourlyWeather year;

  private MeasuredYear(SiteClimate site, HoursDesign hours, double longitudeDeg) {
    this.site = site;
    this.hours = hours;
    this.longitudeDeg = longitudeDeg;
    this.year = new HourlyWeather();
  }

  static HourlyWeather of(SiteClimate site, HoursDesign hours, double longitudeDeg) {
    return new MeasuredYear(site, hours, longitudeDeg).make();
  }

  private HourlyWeather make() {
    int[] months = Months.monthOfDay();
    double[] normalDewPoint = MonthToDay.days(site.dewPointC());
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      sun(day);
      double outside = 0;
      double global = 0;
      for (int index = 24 * day; index < 24 * day + 24; index++) {
        year.airC[index] = hours.airTemperatureC().get(index);
        year.dailyAirC[day] += year.airC[index] / 24;
        year.windMS[index] =
            hours.windMS() == null ? site.windMS()[months[day]] : hours.windMS().get(index);
        outside += year.extraterrestrialWM2[index];
        global += year.beamWM2[index] + year.diffuseWM2[index];
      }
      year.dailySolarMJM2[day] = global * 3600 / 1e6;
      sky(
          day,
          outside > 0 ? Math.min(1, global / outside) : site.clearness()[months[day]],
          normalDewPoint[day]);
    }
    return year;
  }

  /** Splits an hour's sun and finds the hour angle in the middle of its sunlit part. */
  private void sun(int day) {
    double latitude = site.latitudeRad();
    double declination = Orbit.REAL.declination(day);
    double distance = Orbit.REAL.distanceFactor(day);
    double sunset = SunPosition.sunsetHourAngle(latitude, declination);
    year.declinationRad[day] = declination;
    year.dayLengthH[day] = SunPosition.daylightHours(sunset);
    double ahead =
        (longitudeDeg - 15 * hours.utcOffsetH()) / 15 + SunPosition.equationOfTimeMin(day + 1) / 60;
    for (int hour = 0; hour < 24; hour++) {
      int index = 24 * day + hour;
      double global = hours.globalWM2().get(index);
      double diffuse = hours.diffuseWM2().get(index);
      double start = wrapped((hour + ahead - 12) * RADIANS_PER_HOUR);
      double from = Math.max(-sunset, start);
      double to = Math.min(sunset, start + RADIANS_PER_HOUR);
      if (to <= from) {
        continue;
      }
      double middle = (from + to) / 2;
      double outside =
          (to - from)
              / RADIANS_PER_HOUR
              * SolarRadiation.SOLAR_CONSTANT_W_M2
              * distance
              * Math.max(0, SunPosition.cosZenith(latitude, declination, middle));
      year.sunAt(index, middle);
      year.extraterrestrialWM2[index] = outside;
      year.beamWM2[index] = Math.max(0, Math.min(outside, global - diffuse));
      year.diffuseWM2[index] = global - year.beamWM2[index];
    }
  }

  private static double wrapped(double angle) {
    return angle < -FastMath.PI ? angle + 2 * FastMath.PI : angle;
  }

  private void sky(int day, double clearness, double normalDewPointC) {
    double longWave = SkyTemperature.longWaveClearness(clearness, site.elevationM());
    for (int hour = 0; hour < 24; hour++) {
      int index = 24 * day + hour;
      double dew = hours.dewPointC() == null ? normalDewPointC : hours.dewPointC().get(index);
      year.skyC[index] =
          SkyTemperature.skyTemperatureC(
              year.airC[index],
              SkyTemperature.clearSkyEmissivity(Math.min(dew, year.airC[index]), hour + 0.5),
              longWave);
    }
  }
}
