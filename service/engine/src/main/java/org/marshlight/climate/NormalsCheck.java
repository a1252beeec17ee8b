package org.marshlight.climate;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientSet;

/** Finds monthly normals that no place on earth can have. */
public final class NormalsCheck {

  private static final double ROUNDING_K = 0.05;

  private NormalsCheck() {}

  /**
   * Faults of normals that contradict each other or the sun.
   *
   * @param normals normals whose single values are legal
   * @param latitudeDeg latitude of the site
   * @param pointer where the normals stand
   */
  public static List<Fault> faults(
      MonthlyNormals normals, double latitudeDeg, String pointer, CoefficientSet set) {
    List<Fault> faults = new ArrayList<>();
    double greatest = set.bind(ClimateCoefficients.class).greatestClearness();
    double[] outside = Orbit.REAL.extraterrestrialMJM2Day(FastMath.toRadians(latitudeDeg));
    boolean sun = normals.horizontalSolarKWhM2Day() != null;
    boolean extremes =
        normals.meanMaxAirTemperatureC() != null && normals.meanMinAirTemperatureC() != null;
    if (!sun && !extremes) {
      faults.add(
          Fault.of(
              "climate.radiation-or-extremes",
              pointer + "/horizontalSolarKWhM2Day",
              null,
              "12 values, or both daily extremes of temperature"));
    }
    for (int month = 0; month < 12; month++) {
      double solar = sun ? normals.horizontalSolarKWhM2Day().get(month) : 0;
      double most = greatest * outside[month] / 3.6;
      if (solar > most) {
        faults.add(moreSunThanSky(solar, most, month, pointer));
      }
      addTemperatures(normals, month, pointer, faults);
    }
    return faults;
  }

  private static Fault moreSunThanSky(double solar, double most, int month, String pointer) {
    return Fault.of(
        "climate.more-sun-than-sky",
        pointer + "/horizontalSolarKWhM2Day/" + month,
        solar,
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
