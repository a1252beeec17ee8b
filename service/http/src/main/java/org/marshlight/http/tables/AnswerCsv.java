package org.marshlight.http.tables;

import com.fasterxml.jackson.core.io.NumberOutput;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.MessageBodyWriter;
import jakarta.ws.rs.ext.Provider;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.annotation.Annotation;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.marshlight.Answer;

/** Writes an answer as comma-separated values (RFC 4180). */
@Provider
@Produces("text/csv")
public class AnswerCsv implements MessageBodyWriter<Answer<?>> {

  /** Media type without its parameters. */
  public static final String MEDIA_TYPE = "text/csv";

  private static final String CONTENT_TYPE = "text/csv; charset=utf-8; header=present";
  private static final String OPENS_A_FORMULA = "=+-@\t\r";

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader("kind", "id", "month", "value", "unit", "text").get();

  @Override
  public boolean isWriteable(
      Class<?> type, Type genericType, Annotation[] annotations, MediaType mediaType) {
    return type == Answer.class;
  }

  @Override
  public void writeTo(
      Answer<?> answer,
      Class<?> type,
      Type genericType,
      Annotation[] annotations,
      MediaType mediaType,
      MultivaluedMap<String, Object> headers,
      OutputStream stream)
      throws IOException {
    headers.putSingle(HttpHeaders.CONTENT_TYPE, CONTENT_TYPE);
    stream.write(csv(answer).getBytes(StandardCharsets.UTF_8));
  }

  static String csv(Answer<?> answer) throws IOException {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      for (TableRow row : AnswerTable.of(answer)) {
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
