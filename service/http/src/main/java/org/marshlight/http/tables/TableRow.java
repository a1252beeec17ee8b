package org.marshlight.http.tables;

/**
 * One row of the table of an answer.
 *
 * @param kind {@code value}, {@code caution} or {@code notice}
 * @param id dotted path of a figure, or the code of a caution or notice
 * @param month 1 = January; null for figures that are not monthly
 * @param value the number; null where there is none
 * @param unit UCUM code; empty if there is none
 * @param text text, choice or sentence; empty for numbers
 */
record TableRow(String kind, String id, Integer month, Number value, String unit, String text) {

  static final String VALUE = "value";
  static final String CAUTION = "caution";
  static final String NOTICE = "notice";
}
