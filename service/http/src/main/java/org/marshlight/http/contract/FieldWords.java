package org.marshlight.http.contract;

import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;

/** What the document says of a field: its meaning, where its ids are listed, its default. */
final class FieldWords {

  private FieldWords() {}

  static String of(RecordShape.Field field) {
    StringBuilder words = new StringBuilder(field.meaning());
    field.catalogue().ifPresent(name -> words.append(" Listed at /v1/").append(name).append('.'));
    field.usualChoice().ifPresent(choice -> notGiven(words, choice));
    field
        .quantity()
        .map(Quantity::usual)
        .flatMap(CoefficientBook.standard()::find)
        .ifPresent(row -> notGiven(words, usual(row)));
    return words.toString();
  }

  private static void notGiven(StringBuilder words, String value) {
    words.append(" If not given: ").append(value).append('.');
  }

  private static String usual(CoefficientRow row) {
    String unit = row.unit().equals("1") ? "" : " " + row.unit();
    return row.value() + unit + " (" + row.id() + ")";
  }
}
