package org.marshlight.digester;

import org.marshlight.contract.Months;

/**
 * Solids that settle, are hydrolysed and are pumped, as long as the tank never fills: each lump by
 * itself then goes through a day, a year and the time between two desludgings as {@code s -> a s +
 * b}, and what it is at the start of a time that ends as it began is {@code b / (1 - a)}.
 */
final class PeriodicSolids {

  private static final int[] MONTH_OF_DAY = Months.monthOfDay();

  private final int years;
  private final int desludgingDay;
  private final double seedShare;

  /**
   * Solids of a tank.
   *
   * @param years whole years between two desludgings
   * @param desludgingDay day of the last year on whose evening the sludge is pumped, from 0
   * @param seedShare share that is left, 0 to 1
   */
  PeriodicSolids(int years, int desludgingDay, double seedShare) {
    this.years = years;
    this.desludgingDay = desludgingDay;
    this.seedShare = seedShare;
  }

  /**
   * What there is of a lump at the start of the last year of a period, in the evening of whose
   * desludging day the sludge is pumped.
   *
   * @param settling what settles on each day of a month
   * @param takenOnDay share of what lies there that each day takes; null if nothing is taken
   * @param lump which of the shares
   */
  double atStartOfLastYear(double[] settling, double[][] takenOnDay, int lump) {
    Line before = days(0, desludgingDay + 1, settling, takenOnDay, lump);
    Line after = days(desludgingDay + 1, Months.DAYS_PER_YEAR, settling, takenOnDay, lump);
    Line period = after.of(before.times(seedShare));
    for (int year = 1; year < years; year++) {
      period = after.of(before).of(period);
    }
    return period.slope < 1 ? period.start / (1 - period.slope) : 0;
  }

  private static Line days(
      int fromDay, int toDay, double[] settling, double[][] takenOnDay, int lump) {
    double slope = 1;
    double start = 0;
    for (int day = fromDay; day < toDay; day++) {
      double left = takenOnDay == null ? 1 : 1 - takenOnDay[day][lump];
      slope *= left;
      start = left * (start + settling[MONTH_OF_DAY[day]]);
    }
    return new Line(slope, start);
  }

  /** A line {@code slope s + start}. */
  private record Line(double slope, double start) {

    Line times(double share) {
      return new Line(share * slope, share * start);
    }

    Line of(Line earlier) {
      return new Line(slope * earlier.slope, slope * earlier.start + start);
    }
  }
}
