package org.marshlight.climate;

import java.util.Arrays;
import java.util.List;

/** Lines of a TMY3 file: the station, the names of the columns, then an hour each. */
final class Tmy3Format {

  private static final int HEADER_LINES = 2;
  private static final double MISSING = -9900;

  private Tmy3Format() {}

  static WeatherReading read(List<String> lines) {
    String[] station = lines.get(0).split(",", -1);
    if (lines.size() < HEADER_LINES || station.length < 7) {
      throw WeatherFile.refused(
          "climate.weather-file-unknown", 1, "the header of an EPW or a TMY3 file");
    }
    List<String> names = Arrays.stream(lines.get(1).split(",", -1)).map(String::strip).toList();
    int date = column(names, "Date (MM/DD/YYYY)");
    int time = column(names, "Time (HH:MM)");
    int global = column(names, "GHI (W/m^2)");
    int diffuse = column(names, "DHI (W/m^2)");
    int air = column(names, "Dry-bulb (C)");
    int dewPoint = column(names, "Dew-point (C)");
    int wind = column(names, "Wspd (m/s)");
    int first = HEADER_LINES + 1;
    WeatherHours hours = new WeatherHours(first);
    CalendarOfHours calendar = new CalendarOfHours(lines.size() - HEADER_LINES, first);
    for (int i = HEADER_LINES; i < lines.size(); i++) {
      int line = i + 1;
      String[] fields = lines.get(i).split(",", -1);
      if (fields.length < names.size()) {
        throw WeatherFile.refused(
            "climate.weather-file-short-line", line, names.size() + " fields or more");
      }
      String[] day = fields[date].split("/");
      String[] clock = fields[time].split(":");
      if (day.length != 3 || clock.length != 2) {
        throw WeatherFile.refused(
            "climate.weather-file-not-a-number",
            line,
            "MM/DD/YYYY and HH:MM",
            "value",
            fields[date] + " " + fields[time]);
      }
      if (!clock[1].strip().equals("00")) {
        throw WeatherFile.refused("climate.weather-file-not-hourly", line, "whole hours");
      }
      int hour =
          calendar.next(
              line,
              WeatherField.whole(day[0], line),
              WeatherField.whole(day[1], line),
              WeatherField.whole(clock[0], line));
      hours.airC[hour] = WeatherField.above(fields[air], line, MISSING, -80, 60);
      hours.dewPointC[hour] = WeatherField.above(fields[dewPoint], line, MISSING, -90, 40);
      hours.globalWM2[hour] = WeatherField.above(fields[global], line, MISSING, 0, 1500);
      hours.diffuseWM2[hour] = WeatherField.above(fields[diffuse], line, MISSING, 0, 1000);
      hours.windMS[hour] = WeatherField.above(fields[wind], line, MISSING, 0, 60);
    }
    calendar.complete(lines.size());
    return hours.reading(
        station[1].replace("\"", "").strip(),
        WeatherField.required(station[4], 1, -90, 90),
        WeatherField.required(station[5], 1, -180, 180),
        WeatherField.required(station[3], 1, -12, 14),
        WeatherField.required(station[6], 1, -430, 5500));
  }

  private static int column(List<String> names, String name) {
    int column = names.indexOf(name);
    if (column < 0) {
      throw WeatherFile.refused(
          "climate.weather-file-no-column", 2, "a column named " + name, "column", name);
    }
    return column;
  }
}
