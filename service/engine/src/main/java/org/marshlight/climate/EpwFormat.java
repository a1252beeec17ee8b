package org.marshlight.climate;

import java.util.List;

/** Lines of an EPW file: eight of header, then an hour each. */
final class EpwFormat {

  private static final int HEADER_LINES = 8;
  private static final int LEAST_FIELDS = 22;
  private static final int MONTH = 1;
  private static final int DAY = 2;
  private static final int HOUR = 3;
  private static final int AIR = 6;
  private static final int DEW_POINT = 7;
  private static final int GLOBAL = 13;
  private static final int DIFFUSE = 15;
  private static final int WIND = 21;

  private EpwFormat() {}

  static WeatherReading read(List<String> lines) {
    String[] location = lines.get(0).split(",", -1);
    if (location.length < 10) {
      throw WeatherFile.refused(
          "climate.weather-file-location", 1, "ten fields, the last four numbers");
    }
    if (lines.size() > HEADER_LINES - 1) {
      hourly(lines.get(HEADER_LINES - 1));
    }
    int first = HEADER_LINES + 1;
    WeatherHours hours = new WeatherHours(first);
    CalendarOfHours calendar = new CalendarOfHours(lines.size() - HEADER_LINES, first);
    for (int i = HEADER_LINES; i < lines.size(); i++) {
      int line = i + 1;
      String[] fields = lines.get(i).split(",", -1);
      if (fields.length < LEAST_FIELDS) {
        throw WeatherFile.refused(
            "climate.weather-file-short-line", line, LEAST_FIELDS + " fields or more");
      }
      int hour =
          calendar.next(
              line,
              WeatherField.whole(fields[MONTH], line),
              WeatherField.whole(fields[DAY], line),
              WeatherField.whole(fields[HOUR], line));
      hours.airC[hour] = WeatherField.number(fields[AIR], line, 99, -80, 60);
      hours.dewPointC[hour] = WeatherField.number(fields[DEW_POINT], line, 99, -90, 40);
      hours.globalWM2[hour] = WeatherField.number(fields[GLOBAL], line, 9999, 0, 1500);
      hours.diffuseWM2[hour] = WeatherField.number(fields[DIFFUSE], line, 9999, 0, 1000);
      hours.windMS[hour] = WeatherField.number(fields[WIND], line, 999, 0, 60);
    }
    calendar.complete(lines.size());
    return hours.reading(
        location[1].strip(),
        WeatherField.required(location[6], 1, -90, 90),
        WeatherField.required(location[7], 1, -180, 180),
        WeatherField.required(location[8], 1, -12, 14),
        WeatherField.required(location[9], 1, -430, 5500));
  }

  /** The last line of the header says how many records an hour has. */
  private static void hourly(String dataPeriods) {
    String[] fields = dataPeriods.split(",", -1);
    if (!fields[0].equals("DATA PERIODS") || fields.length < 3 || !fields[2].strip().equals("1")) {
      throw WeatherFile.refused(
          "climate.weather-file-not-hourly", HEADER_LINES, "DATA PERIODS,1,1,...");
    }
  }
}
