package org.marshlight.climate;

import java.util.Arrays;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientBook;

/** Years of a plain orbit, in which the hemispheres are mirror images of each other. */
public final class SymmetricYears {

  private static final double TILT_RAD = Math.toRadians(23.45);

  private SymmetricYears() {}

  /**
   * A year with twelve equal months at a latitude.
   *
   * @param latitudeDeg latitude; the sun of the southern hemisphere is half a year ahead
   */
  public static ClimateYear at(double latitudeDeg) {
    double sign = latitudeDeg >= 0 ? 1 : -1;
    Orbit orbit =
        new Orbit() {
          @Override
          public double declination(int day) {
            return sign * TILT_RAD * Math.sin(2 * Math.PI * (day + 0.5 - 80) / 365);
          }

          @Override
          public double distanceFactor(int day) {
            return 1;
          }
        };
    double[] clearness = constant(0.5);
    double[] outside = orbit.extraterrestrialMJM2Day(Math.toRadians(latitudeDeg));
    double[] solar = new double[Months.COUNT];
    Arrays.setAll(solar, month -> clearness[month] * outside[month] / 3.6);
    return ClimateYear.of(
        new SiteClimate(
            Math.toRadians(latitudeDeg),
            100,
            CoefficientBook.standard().central().bind(SoilProperties.class, "moist-loam"),
            constant(11),
            constant(8),
            constant(6),
            constant(2),
            constant(60),
            solar,
            clearness,
            constant(2),
            new GroundSurface(12, 3, 30),
            constant(0.2),
            new double[0]),
        orbit);
  }

  private static double[] constant(double value) {
    return Months.constant(value);
  }
}
