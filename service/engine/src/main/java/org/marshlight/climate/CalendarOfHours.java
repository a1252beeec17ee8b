package org.marshlight.climate;

import org.marshlight.contract.Months;

/** Holds the hours of a weather file to the calendar of a year of 365 days. */
final class CalendarOfHours {

  private final int firstLine;
  private final int[] monthOfDay = Months.monthOfDay();
  private int expected;

  /**
   * A calendar of which no hour has been read.
   *
   * @param lines lines of the file that hold hours
   * @param firstLine line of the first of them
   */
  CalendarOfHours(int lines, int firstLine) {
    this.firstLine = firstLine;
    if (lines > HoursDesign.HOURS && lines != HoursDesign.HOURS + 24) {
      throw WeatherFile.refused(
          "climate.weather-file-too-long",
          firstLine + HoursDesign.HOURS,
          HoursDesign.HOURS + " hours");
    }
  }

  /**
   * Takes the next line.
   *
   * @param month 1 to 12
   * @param day 1 to 31
   * @param hour 1 to 24, the hour that ends
   * @return place of the hour in the year, from nought
   */
  int next(int line, int month, int day, int hour) {
    if (month == 2 && day == 29) {
      throw WeatherFile.refused("climate.weather-file-leap-year", line, "365 days");
    }
    if (expected >= HoursDesign.HOURS) {
      throw WeatherFile.refused(
          "climate.weather-file-too-long", line, HoursDesign.HOURS + " hours");
    }
    int wantedMonth = monthOfDay[expected / 24] + 1;
    int wantedDay = expected / 24 - Months.firstDay(wantedMonth - 1) + 1;
    int wantedHour = expected % 24 + 1;
    if (month != wantedMonth || day != wantedDay || hour != wantedHour) {
      throw WeatherFile.refused(
          "climate.weather-file-out-of-order",
          line,
          "month " + wantedMonth + ", day " + wantedDay + ", hour " + wantedHour,
          "month",
          month,
          "day",
          day,
          "hour",
          hour);
    }
    return expected++;
  }

  /** Sees to it that no hour is missing at the end. */
  void complete(int lastLine) {
    if (expected < HoursDesign.HOURS) {
      throw WeatherFile.refused(
          "climate.weather-file-truncated",
          lastLine,
          HoursDesign.HOURS + " hours from line " + firstLine,
          "hours",
          expected);
    }
  }
}
