package org.marshlight.contract;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Twelve values, January first, in a year of 365 days. */
public final class Months {

  /** Days of each month of the year of 365 days. */
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  public static final int COUNT = 12;
  public static final int DAYS_PER_YEAR = 365;

  private Months() {}

  /** Days in a month, 0 = January. */
  public static int days(int month) {
    return DAYS[month];
  }

  /** Month (0 = January) of each day of the year. */
  public static int[] monthOfDay() {
    int[] months = new int[DAYS_PER_YEAR];
    int day = 0;
    for (int month = 0; month < COUNT; month++) {
      for (int d = 0; d < DAYS[month]; d++) {
        months[day++] = month;
      }
    }
    return months;
  }

  /** First day of a month counted from zero. */
  public static int firstDay(int month) {
    int day = 0;
    for (int m = 0; m < month; m++) {
      day += DAYS[m];
    }
    return day;
  }

  /** Unmodifiable list of the values; NaN stands for "no value" and becomes null. */
  public static List<Double> list(double[] values) {
    List<Double> list = new ArrayList<>(values.length);
    for (double value : values) {
      list.add(Double.isNaN(value) ? null : Double.valueOf(value));
    }
    return Collections.unmodifiableList(list);
  }

  /** The values as primitives. */
  public static double[] array(List<Double> values) {
    double[] array = new double[values.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = values.get(i);
    }
    return array;
  }

  /** Twelve times the same value. */
  public static double[] constant(double value) {
    double[] values = new double[COUNT];
    java.util.Arrays.fill(values, value);
    return values;
  }

  /** Sum of the values, in order. */
  public static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** Mean over the year of monthly means, each month weighted with its days. */
  public static double mean(double[] monthly) {
    double sum = 0;
    for (int month = 0; month < COUNT; month++) {
      sum += monthly[month] * DAYS[month];
    }
    return sum / DAYS_PER_YEAR;
  }

  /**
   * The month's share of a list of months such as {@code [11, 12, 1]}; an absent list means all.
   */
  public static boolean includes(List<Integer> months, int month) {
    return months == null || months.contains(month + 1);
  }
}
