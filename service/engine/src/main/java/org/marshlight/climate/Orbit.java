package org.marshlight.climate;

import org.marshlight.contract.Months;

/**
 * Where the sun stands through the year. There is one real orbit; tests use a plain one, in which
 * the hemispheres are mirror images.
 */
interface Orbit {

  /** The real orbit. */
  Orbit REAL =
      new Orbit() {
        @Override
        public double declination(int day) {
          return SunPosition.declination(day + 1);
        }

        @Override
        public double distanceFactor(int day) {
          return SunPosition.distanceFactor(day + 1);
        }
      };

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
}
