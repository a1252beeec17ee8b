package org.marshlight.climate;

import org.marshlight.contract.Faults;

/** Single fields of a weather file. */
final class WeatherField {

  private WeatherField() {}

  /** A whole number. */
  static int whole(String field, int line) {
    try {
      return Integer.parseInt(field.strip());
    } catch (NumberFormatException e) {
      throw notANumber(field, line, "a whole number");
    }
  }

  /** A number that must be there. */
  static double required(String field, int line, double low, double high) {
    double value = parsed(field, line);
    return inRange(value, field, line, low, high);
  }

  /** A number, or NaN where it is at or above the format's mark of a missing value. */
  static double number(String field, int line, double missingFrom, double low, double high) {
    double value = parsed(field, line);
    return value >= missingFrom ? Double.NaN : inRange(value, field, line, low, high);
  }

  /** A number, or NaN where it is at or below the format's mark of a missing value. */
  static double above(String field, int line, double missing, double low, double high) {
    double value = parsed(field, line);
    return value <= missing ? Double.NaN : inRange(value, field, line, low, high);
  }

  private static double inRange(double value, String field, int line, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw WeatherFile.refused(
          "climate.weather-file-out-of-range",
          line,
          low + " to " + high,
          "value",
          field.strip(),
          "low",
          low,
          "high",
          high);
    }
    return value;
  }

  private static double parsed(String field, int line) {
    try {
      return Double.parseDouble(field.strip());
    } catch (NumberFormatException e) {
      throw notANumber(field, line, "a number");
    }
  }

  private static Faults notANumber(String field, int line, String allowed) {
    String text = field.strip();
    return WeatherFile.refused(
        "climate.weather-file-not-a-number",
        line,
        allowed,
        "value",
        text.length() > 40 ? text.substring(0, 40) : text);
  }
}
