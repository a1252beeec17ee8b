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
        faults.add(
            Fault.of(
                "climate.more-sun-than-sky",
                pointer + "/horizontalSolarKWhM2Day/" + month,
                solar,
                "0 to " + Sentences.number(most) + " kW.h/(m2.d)",
                "month",
                month + 1,
                "most",
                most));
      }
      double air = normals.meanAirTemperatureC().get(month);
      if (normals.dewPointC() != null && normals.dewPointC().get(month) > air + ROUNDING_K) {
        faults.add(
            above("climate.dew-above-air", "dewPointC", normals.dewPointC(), air, month, pointer));
      }
      if (normals.meanMinAirTemperatureC() != null
          && normals.meanMinAirTemperatureC().get(month) > air + ROUNDING_K) {
        faults.add(
            above(
                "climate.minimum-above-mean",
                "meanMinAirTemperatureC",
                normals.meanMinAirTemperatureC(),
                air,
                month,
                pointer));
      }
      if (normals.meanMaxAirTemperatureC() != null
          && normals.meanMaxAirTemperatureC().get(month) < air - ROUNDING_K) {
        faults.add(
            Fault.of(
                "climate.maximum-below-mean",
                pointer + "/meanMaxAirTemperatureC/" + month,
                normals.meanMaxAirTemperatureC().get(month),
                "at least " + Sentences.number(air) + " Cel",
                "month",
                month + 1,
                "meanC",
                air));
      }
    }
    return faults;
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
