package org.marshlight.climate;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.marshlight.contract.Months;

/**
 * Where the sun stands through the year. There is one real orbit; tests use a plain one, in which
 * the hemispheres are mirror images.
 */
interface Orbit {

  /** The real orbit. */
  Orbit REAL =
      new Orbit() {
        /** Monthly means of the latitude asked for last: runs of one plan ask for the same. */
        private volatile OfLatitude last = new OfLatitude(Double.NaN, new double[0]);

        private final double[] declination = eachDay(day -> SunPosition.declination(day + 1));
        private final double[] distanceFactor = eachDay(day -> SunPosition.distanceFactor(day + 1));

        @Override
        public double declination(int day) {
          return declination[day];
        }

        @Override
        public double distanceFactor(int day) {
          return distanceFactor[day];
        }

        @Override
        public double[] extraterrestrialMJM2Day(double latitudeRad) {
          OfLatitude known = last;
          if (known.latitudeRad != latitudeRad) {
            known = new OfLatitude(latitudeRad, Orbit.super.extraterrestrialMJM2Day(latitudeRad));
            last = known;
          }
          return known.meansMJM2Day.clone();
        }
      };

  private static double[] eachDay(IntToDoubleFunction value) {
    return IntStream.range(0, Months.DAYS_PER_YEAR).mapToDouble(value).toArray();
  }

  /** Declination of a day counted from nought, rad. */
  double declination(int day);

  /** Radiation outside the atmosphere over its mean. */
  double distanceFactor(int day);

  /** Radiation outside the atmosphere on the horizontal, mean over each month, MJ/(m2.d). */
  default double[] extraterrestrialMJM2Day(double latitudeRad) {
    double[] means = new double[Months.COUNT];
    for (int month = 0; month < means.length; month++) {
      int days = Months.days(month);
      int first = Months.firstDay(month);
      for (int day = first; day < first + days; day++) {
        means[month] +=
            SolarRadiation.extraterrestrialMJM2Day(
                    latitudeRad, declination(day), distanceFactor(day))
                / days;
      }
    }
    return means;
  }

  /**
   * Radiation outside the atmosphere at a latitude.
   *
   * @param latitudeRad north positive
   * @param meansMJM2Day mean of each month
   */
  record OfLatitude(double latitudeRad, double[] meansMJM2Day) {}
}
