package org.marshlight.climate;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;

/**
 * The year's wave of the ground's surface temperature.
 *
 * @param meanC mean over the year
 * @param amplitudeK half the swing of the first harmonic
 * @param coldestDay day of the year on which the surface is coldest
 */
public record GroundSurface(double meanC, double amplitudeK, double coldestDay) {

  private static final double YEAR = 2 * FastMath.PI / Months.DAYS_PER_YEAR;

  /**
   * The wave that follows from the air's monthly means: their first harmonic, with the mean raised
   * and the swing changed as ground surfaces are.
   */
  public static GroundSurface ofAir(double[] airC, ClimateCoefficients coefficients) {
    double cosine = 0;
    double sine = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      double angle = YEAR * (Months.firstDay(month) + Months.days(month) / 2.0);
      cosine += airC[month] * FastMath.cos(angle) / 6;
      sine += airC[month] * FastMath.sin(angle) / 6;
    }
    double monthlyMeanOverWave = FastMath.sin(FastMath.PI / 12) / (FastMath.PI / 12);
    double amplitude = Math.sqrt(cosine * cosine + sine * sine) / monthlyMeanOverWave;
    double day = FastMath.atan2(-sine, -cosine) / YEAR;
    return new GroundSurface(
        Months.mean(airC) + coefficients.groundSurfaceAboveAir(),
        amplitude * coefficients.groundSurfaceSwing(),
        day < 0 ? day + Months.DAYS_PER_YEAR : day);
  }

  /** Temperature of undisturbed ground at a depth in the middle of each month. */
  public double[] monthlyC(double depthM, double dampingDepthM) {
    double[] monthly = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double day = Months.firstDay(month) + Months.days(month) / 2.0;
      monthly[month] =
          GroundTemperature.temperatureC(depthM, day, meanC, amplitudeK, coldestDay, dampingDepthM);
    }
    return monthly;
  }
}
