package org.marshlight.http.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.http.form.Item.Help;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.http.words.Words;

/** What to know of a field: what it is, how to find it, its range, its default and where from. */
final class FieldHelp {

  private static final double VERY_LARGE = 1e9;

  private final Texts texts;

  FieldHelp(Texts texts) {
    this.texts = texts;
  }

  Help of(RecordShape.Field field, String path) {
    List<String> lines = new ArrayList<>();
    field.quantity().ifPresent(quantity -> lines.add(range(quantity, path)));
    Optional<CoefficientRow> usual = row(field);
    usual.ifPresent(row -> lines.add(usual(row, path)));
    field
        .usualChoice()
        .ifPresent(
            choice ->
                lines.add(
                    texts.plain("form.usual-choice", Map.of("choice", choice.replace('-', ' ')))));
    String find = "find." + path;
    return new Help(
        Words.sentence(field.meaning()), texts.has(find) ? texts.plain(find) : "", lines);
  }

  /** The number that stands in where the field is left open; null where none does. */
  Double usual(RecordShape.Field field) {
    return row(field).map(CoefficientRow::value).orElse(null);
  }

  private static Optional<CoefficientRow> row(RecordShape.Field field) {
    return field.quantity().map(Quantity::usual).flatMap(CoefficientBook.standard()::find);
  }

  private String range(Quantity quantity, String path) {
    return texts.plain(
        "form.range",
        Map.of(
            "low", both(quantity.min(), quantity.unit(), path),
            "high", both(quantity.max(), quantity.unit(), path)));
  }

  /** What is usual, with its range where it has one. */
  private String usual(CoefficientRow row, String path) {
    String low = both(row.low(), row.unit(), path);
    String high = both(row.high(), row.unit(), path);
    // a rule that somebody set has no range, and neither has one that vanishes when it is rounded
    return texts.plain(
        low.equals(high) ? "form.usual-only" : "form.usual",
        Map.of(
            "value", both(row.value(), row.unit(), path),
            "low", low,
            "high", high,
            "source", row.source(),
            "mark", row.mark()));
  }

  /** A number in SI, and in US customary units where these differ. */
  private static String both(double value, String ucum, String path) {
    String si = shown(value, ucum, path, UnitSystem.SI);
    String us = shown(value, ucum, path, UnitSystem.US_CUSTOMARY);
    return si.equals(us) ? si : si + " (" + us + ")";
  }

  private static String shown(double value, String ucum, String path, UnitSystem system) {
    if (Math.abs(value) >= VERY_LARGE) {
      return "10\u2079";
    }
    return new Words(system).quantity(value, ucum, path);
  }
}
