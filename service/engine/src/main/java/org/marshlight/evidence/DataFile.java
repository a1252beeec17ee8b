package org.marshlight.evidence;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the engine's own data files: CSV with a header row and {@code #} comments. */
public final class DataFile {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private DataFile() {}

  /** The rows of a file beside a class, or none if there is no such file. */
  public static List<CSVRecord> rowsIfPresent(Class<?> beside, String name) {
    return beside.getResource(name) == null ? List.of() : rows(beside, name);
  }

  /**
   * The rows of a file beside a class.
   *
   * @throws IllegalArgumentException if there is no such file
   */
  public static List<CSVRecord> rows(Class<?> beside, String name) {
    try (InputStream stream = beside.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalArgumentException("no " + name + " beside " + beside.getName());
      }
      Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
      try (CSVParser parser = FORMAT.parse(reader)) {
        return parser.getRecords();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
