package org.marshlight.climate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Months;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;

/** Finds climates that no place on earth can have, or not the place of the site. */
public final class NormalsCheck {

  private static final double ROUNDING_K = 0.05;

  /** Half a watt, to which weather files round, in every hour of the day. */
  private static final double ROUNDING_KWH_M2_DAY = 0.5 * 24 / 1000;

  private NormalsCheck() {}

  /**
   * Faults of a site's climate: normals that contradict each other or the sun, hours with more sun
   * than the sky lets through, and a named station too far from the site.
   *
   * @param site a site with a climate and a latitude, its own or its station's, whose single values
   *     are legal
   * @param set coefficients of the run
   */
  public static List<Fault> faults(SiteDesign site, CoefficientSet set) {
    List<Fault> faults = new ArrayList<>();
    BuiltInClimate station = site.climate().station();
    if (station != null) {
      faults.addAll(StationDistance.of(site, station).faults(site, station, set));
      if (!faults.isEmpty()) {
        return faults;
      }
    }
    double latitudeDeg = site.latitudeDeg() == null ? station.latitudeDeg() : site.latitudeDeg();
    double[] most = mostSunKWhM2Day(latitudeDeg, set);
    MonthlyNormals normals = site.climate().normals();
    if (station == null) {
      addSources(normals, faults);
    }
    for (int month = 0; month < Months.COUNT; month++) {
      addSun(site, normals, month, most[month], faults);
      addTemperatures(normals, month, "/site/climate/monthly", faults);
    }
    if (site.hours() != null) {
      addHours(site.hours(), most, faults);
    }
    return faults;
  }

  /** The most that a clear month lets through to the horizontal, kWh/(m2 d). */
  private static double[] mostSunKWhM2Day(double latitudeDeg, CoefficientSet set) {
    double greatest = set.bind(ClimateCoefficients.class).greatestClearness();
    double[] most = Orbit.REAL.extraterrestrialMJM2Day(FastMath.toRadians(latitudeDeg));
    for (int month = 0; month < Months.COUNT; month++) {
      most[month] = greatest * most[month] / 3.6;
    }
    return most;
  }

  private static void addSources(MonthlyNormals normals, List<Fault> faults) {
    boolean extremes =
        normals.meanMaxAirTemperatureC() != null && normals.meanMinAirTemperatureC() != null;
    if (normals.horizontalSolarKWhM2Day() == null && !extremes) {
      faults.add(
          Fault.of(
              "climate.radiation-or-extremes",
              "/site/climate/monthly/horizontalSolarKWhM2Day",
              null,
              "12 values, or both daily extremes of temperature"));
    }
  }

  private static void addSun(
      SiteDesign site, MonthlyNormals normals, int month, double most, List<Fault> faults) {
    if (normals.horizontalSolarKWhM2Day() == null) {
      return;
    }
    double solar = normals.horizontalSolarKWhM2Day().get(month);
    if (solar <= most) {
      return;
    }
    if (site.climate().id() == null) {
      faults.add(
          moreSunThanSky(
              solar, most, month, "/site/climate/monthly/horizontalSolarKWhM2Day/" + month));
    } else {
      faults.add(moreSunThanSky(site.climate().id(), most, month, "/site/climate/id"));
    }
  }

  /** Hours of a month that sum to more than the sky lets through name the month, once. */
  private static void addHours(HoursDesign hours, double[] most, List<Fault> faults) {
    for (int month = 0; month < Months.COUNT; month++) {
      int first = 24 * Months.firstDay(month);
      double sum = 0;
      for (int hour = first; hour < first + 24 * Months.days(month); hour++) {
        sum += hours.globalWM2().get(hour);
      }
      double solar = sum / 1000 / Months.days(month);
      if (solar > most[month] + ROUNDING_KWH_M2_DAY) {
        faults.add(
            Fault.of(
                "climate.hours-more-sun-than-sky",
                "/site/hours/globalWM2",
                null,
                "0 to " + Sentences.number(most[month]) + " kW.h/(m2.d) on the mean day",
                "month",
                month + 1,
                "solar",
                solar,
                "most",
                most[month]));
      }
    }
  }

  private static Fault moreSunThanSky(Object sent, double most, int month, String pointer) {
    return Fault.of(
        "climate.more-sun-than-sky",
        pointer,
        sent,
        "0 to " + Sentences.number(most) + " kW.h/(m2.d)",
        "month",
        month + 1,
        "most",
        most);
  }

  /** Dew point and mean extremes that do not stand in order about the month's mean. */
  private static void addTemperatures(
      MonthlyNormals normals, int month, String pointer, List<Fault> faults) {
    double air = normals.meanAirTemperatureC().get(month);
    List<Double> dew = normals.dewPointC();
    List<Double> least = normals.meanMinAirTemperatureC();
    List<Double> most = normals.meanMaxAirTemperatureC();
    if (dew != null && dew.get(month) > air + ROUNDING_K) {
      faults.add(above("climate.dew-above-air", "dewPointC", dew, air, month, pointer));
    }
    if (least != null && least.get(month) > air + ROUNDING_K) {
      faults.add(
          above(
              "climate.minimum-above-mean", "meanMinAirTemperatureC", least, air, month, pointer));
    }
    if (most != null && most.get(month) < air - ROUNDING_K) {
      faults.add(
          Fault.of(
              "climate.maximum-below-mean",
              pointer + "/meanMaxAirTemperatureC/" + month,
              most.get(month),
              "at least " + Sentences.number(air) + " Cel",
              "month",
              month + 1,
              "meanC",
              air));
    }
  }

  private static Fault above(
      String code, String field, List<Double> values, double air, int month, String pointer) {
    return Fault.of(
        code,
        pointer + "/" + field + "/" + month,
        values.get(month),
        "at most " + Sentences.number(air) + " Cel",
        "month",
        month + 1,
        "meanC",
        air);
  }
}
