package org.marshlight.http.tables;

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

  /** Media type with its parameters. */
  public static final String CONTENT_TYPE = MEDIA_TYPE + "; charset=utf-8; header=present";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader("kind", "id", "month", "value", "unit", "text").get();

  private final Reader reader;

  public AnswerCsv(Reader reader) {
    super(CONTENT_TYPE);
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
            CsvCell.text(row.id()),
            row.month(),
            CsvCell.number(row.value()),
            CsvCell.text(row.unit()),
            CsvCell.text(row.text()));
      }
    }
    return text.toString();
  }
}
