package org.marshlight.climate;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.marshlight.contract.Months;

/**
 * Turns twelve monthly means into a value for each day: straight lines between the middles of
 * months, with the corner points chosen so that every month keeps its mean.
 */
final class MonthToDay {

  /** Day by corner point: how much each corner counts on a day. */
  private static final double[][] WEIGHTS = weights();

  private static final RealMatrix CORNERS_OF_MEANS = cornersOfMeans();

  private MonthToDay() {}

  /** A value for each of the 365 days. */
  static double[] days(double[] monthlyMeans) {
    double[] corners = CORNERS_OF_MEANS.operate(monthlyMeans);
    double[] days = new double[Months.DAYS_PER_YEAR];
    for (int day = 0; day < days.length; day++) {
      double sum = 0;
      for (int month = 0; month < Months.COUNT; month++) {
        sum += WEIGHTS[day][month] * corners[month];
      }
      days[day] = sum;
    }
    return days;
  }

  private static double[][] weights() {
    double[][] weights = new double[Months.DAYS_PER_YEAR][Months.COUNT];
    for (int day = 0; day < weights.length; day++) {
      double middle = day + 0.5;
      int before = 11;
      for (int month = 0; month < Months.COUNT; month++) {
        if (corner(month) <= middle) {
          before = month;
        }
      }
      if (middle < corner(0)) {
        before = 11;
      }
      int after = (before + 1) % 12;
      double from = corner(before) - (middle < corner(0) ? Months.DAYS_PER_YEAR : 0);
      double to = corner(after) + (after == 0 && middle > corner(0) ? Months.DAYS_PER_YEAR : 0);
      double share = (middle - from) / (to - from);
      weights[day][before] = 1 - share;
      weights[day][after] = share;
    }
    return weights;
  }

  private static double corner(int month) {
    return Months.firstDay(month) + Months.days(month) / 2.0;
  }

  private static RealMatrix cornersOfMeans() {
    double[][] meansOfCorners = new double[Months.COUNT][Months.COUNT];
    int[] months = Months.monthOfDay();
    for (int day = 0; day < months.length; day++) {
      for (int corner = 0; corner < Months.COUNT; corner++) {
        meansOfCorners[months[day]][corner] += WEIGHTS[day][corner] / Months.days(months[day]);
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(meansOfCorners)).getSolver().getInverse();
  }
}
