package org.marshlight.http.tables;

import com.fasterxml.jackson.core.io.NumberOutput;

/** What stands in one cell of a table. */
public final class CsvCell {

  private static final String OPENS_A_FORMULA = "=+-@\t\r";

  private CsvCell() {}

  /**
   * A number in the digits in which the JSON form writes it; empty for null.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public static String number(Number value) {
    if (value == null) {
      return "";
    }
    if (!Double.isFinite(value.doubleValue())) {
      throw new IllegalArgumentException(value + " is no number of an answer");
    }
    return value instanceof Double real ? NumberOutput.toString(real, true) : value.toString();
  }

  /** A text that no spreadsheet takes for a formula. */
  public static String text(String text) {
    return !text.isEmpty() && OPENS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
