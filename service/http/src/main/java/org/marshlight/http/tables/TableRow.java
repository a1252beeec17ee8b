package org.marshlight.http.tables;

import org.marshlight.http.words.Unit;
import org.marshlight.http.words.UnitBook;
import org.marshlight.http.words.UnitSystem;

/**
 * One row of the table of an answer.
 *
 * @param kind {@code value}, {@code caution}, {@code notice} or {@code severe-notice}
 * @param id dotted path of a figure, or the code of a caution or notice
 * @param month 1 = January; null for figures that are not monthly
 * @param value the number; null where there is none
 * @param unit UCUM code; empty if there is none
 * @param text text, choice or sentence; empty for numbers
 */
record TableRow(String kind, String id, Integer month, Number value, String unit, String text) {

  /** The same row with its number in the units of a system. */
  TableRow in(UnitSystem system) {
    Unit shown = UnitBook.of(unit, id, system);
    return value == null && unit.isEmpty() || shown.unchanged()
        ? this
        : new TableRow(
            kind,
            id,
            month,
            value == null ? null : (Number) shown.of(value.doubleValue()),
            shown.ucum(),
            text);
  }

  static final String VALUE = "value";
  static final String CAUTION = "caution";
  static final String NOTICE = "notice";
  static final String SEVERE_NOTICE = "severe-notice";
}
