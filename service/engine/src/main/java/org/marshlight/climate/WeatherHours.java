package org.marshlight.climate;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;

/**
 * The hours of a weather file as they are gathered, line by line; NaN stands for a value that the
 * file marks as missing.
 */
final class WeatherHours {

  /** Longest gap that is bridged by a straight line. */
  private static final int LONGEST_GAP_H = 6;

  final double[] airC = new double[HoursDesign.HOURS];
  final double[] dewPointC = new double[HoursDesign.HOURS];
  final double[] globalWM2 = new double[HoursDesign.HOURS];
  final double[] diffuseWM2 = new double[HoursDesign.HOURS];
  final double[] windMS = new double[HoursDesign.HOURS];

  private final int firstLine;
  private final List<Notice> repairs = new ArrayList<>();

  /**
   * No hours yet.
   *
   * @param firstLine line of the file that holds the first hour
   */
  WeatherHours(int firstLine) {
    this.firstLine = firstLine;
  }

  /** The file reduced to monthly normals and hours. */
  WeatherReading reading(
      String name, double latitudeDeg, double longitudeDeg, double utcOffsetH, double elevationM) {
    bridge("air temperature", airC);
    bridge("dew point", dewPointC);
    bridge("global radiation", globalWM2);
    bridge("diffuse radiation", diffuseWM2);
    bridge("wind", windMS);
    bounded("dew point above the air's temperature", dewPointC, airC);
    bounded("diffuse above global radiation", diffuseWM2, globalWM2);
    HoursDesign hours =
        new HoursDesign(
            utcOffsetH,
            Months.list(airC),
            Months.list(dewPointC),
            Months.list(globalWM2),
            Months.list(diffuseWM2),
            Months.list(windMS));
    return new WeatherReading(
        new WeatherReading.Place(name, latitudeDeg, longitudeDeg, elevationM),
        new ClimateChoice(null, normals()),
        hours,
        List.copyOf(repairs));
  }

  /** Bridges short gaps by straight lines and refuses long ones. */
  private void bridge(String quantity, double[] values) {
    int bridged = 0;
    int hour = 0;
    while (hour < values.length) {
      if (!Double.isNaN(values[hour])) {
        hour++;
        continue;
      }
      int end = hour;
      while (end < values.length && Double.isNaN(values[end])) {
        end++;
      }
      if (end - hour > LONGEST_GAP_H || hour == 0 || end == values.length) {
        throw WeatherFile.refused(
            "climate.weather-file-gap",
            firstLine + hour,
            "gaps of at most " + LONGEST_GAP_H + " hours inside the year",
            "quantity",
            quantity,
            "hours",
            end - hour);
      }
      double before = values[hour - 1];
      for (int gap = hour; gap < end; gap++) {
        values[gap] = before + (values[end] - before) * (gap - hour + 1) / (end - hour + 1);
      }
      bridged += end - hour;
      hour = end;
    }
    if (bridged > 0) {
      repairs.add(
          Notice.of("climate.weather-file-bridged", "quantity", quantity, "hours", bridged));
    }
  }

  private void bounded(String what, double[] values, double[] bound) {
    int cut = 0;
    for (int hour = 0; hour < values.length; hour++) {
      if (values[hour] > bound[hour]) {
        values[hour] = bound[hour];
        cut++;
      }
    }
    if (cut > 0) {
      repairs.add(Notice.of("climate.weather-file-cut", "what", what, "hours", cut));
    }
  }

  private MonthlyNormals normals() {
    double[] air = new double[Months.COUNT];
    double[] highest = new double[Months.COUNT];
    double[] lowest = new double[Months.COUNT];
    double[] dew = new double[Months.COUNT];
    double[] sun = new double[Months.COUNT];
    double[] wind = new double[Months.COUNT];
    int[] months = Months.monthOfDay();
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      int month = months[day];
      double days = Months.days(month);
      double high = Double.NEGATIVE_INFINITY;
      double low = Double.POSITIVE_INFINITY;
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        air[month] += airC[hour] / 24 / days;
        dew[month] += dewPointC[hour] / 24 / days;
        sun[month] += globalWM2[hour] / 1000 / days;
        wind[month] += windMS[hour] / 24 / days;
        high = Math.max(high, airC[hour]);
        low = Math.min(low, airC[hour]);
      }
      highest[month] += high / days;
      lowest[month] += low / days;
    }
    return new MonthlyNormals(
        Months.list(air),
        Months.list(highest),
        Months.list(lowest),
        Months.list(sun),
        Months.list(wind),
        10.0,
        null,
        Months.list(dew),
        null);
  }
}
