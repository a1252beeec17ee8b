package org.marshlight.http.tables;

import com.fasterxml.jackson.core.io.NumberOutput;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.marshlight.Answer;
import org.marshlight.http.estimates.AnswerForm;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.words.UnitSystem;

/** Writes an answer as comma-separated values (RFC 4180). */
@Provider
@Produces(AnswerCsv.MEDIA_TYPE)
public class AnswerCsv extends AnswerForm {

  /** Media type without its parameters. */
  public static final String MEDIA_TYPE = "text/csv";

  private static final String OPENS_A_FORMULA = "=+-@\t\r";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader("kind", "id", "month", "value", "unit", "text").get();

  private final Reader reader;

  public AnswerCsv(Reader reader) {
    super(MEDIA_TYPE + "; charset=utf-8; header=present");
    this.reader = reader;
  }

  @Override
  protected String text(Answer<?> answer) throws IOException {
    return text(answer, reader.units());
  }

  static String text(Answer<?> answer, UnitSystem system) throws IOException {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      for (TableRow plain : AnswerTable.of(answer)) {
        TableRow row = plain.in(system);
        printer.printRecord(
            row.kind(),
            harmless(row.id()),
            row.month(),
            number(row.value()),
            harmless(row.unit()),
            harmless(row.text()));
      }
    }
    return text.toString();
  }

  /** A number in the digits in which the JSON form writes it. */
  private static String number(Number value) {
    if (value == null) {
      return "";
    }
    return value instanceof Double real ? NumberOutput.toString(real, true) : value.toString();
  }

  /** A text that no spreadsheet takes for a formula. */
  static String harmless(String text) {
    return !text.isEmpty() && OPENS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
