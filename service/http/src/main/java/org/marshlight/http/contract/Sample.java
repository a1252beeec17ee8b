package org.marshlight.http.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A request that shows how a route is asked.
 *
 * @param name name of its files
 * @param method HTTP method
 * @param path path with its query
 * @param accept media type that is asked for
 * @param status status that it must be answered with
 * @param about what it shows
 * @param body the body; empty if it has none
 */
public record Sample(
    String name, String method, String path, String accept, int status, String about, String body) {

  private static final String FOLDER = "/sample-requests/";

  private static final String WEATHER_FILE = ".epw.gz";

  private static final CSVFormat INDEX =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();

  private static final List<Sample> ALL = read();

  /** Every sample, in the order of the index. */
  public static List<Sample> all() {
    return ALL;
  }

  /** The path without its query. */
  public String route() {
    return path.split("\\?")[0];
  }

  private static List<Sample> read() {
    List<Sample> samples = new ArrayList<>();
    try (Reader index = new InputStreamReader(stream("index.csv"), StandardCharsets.UTF_8)) {
      for (CSVRecord row : INDEX.parse(index)) {
        String method = row.get("method");
        samples.add(
            new Sample(
                row.get("name"),
                method,
                row.get("path"),
                row.get("accept"),
                Integer.parseInt(row.get("status")),
                row.get("about"),
                method.equals("POST") ? body(row.get("name")) : ""));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(samples);
  }

  /** Media type of the body. */
  public String bodyType() {
    return path.contains("/from-weather-file") ? "text/plain" : "application/json";
  }

  /** A body of JSON, or a weather file, which is kept packed. */
  private static String body(String name) throws IOException {
    InputStream json = stream(name + ".json");
    try (InputStream plain =
        json != null ? json : new GZIPInputStream(stream(name + WEATHER_FILE))) {
      return new String(plain.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static InputStream stream(String file) {
    return Sample.class.getResourceAsStream(FOLDER + file);
  }
}
