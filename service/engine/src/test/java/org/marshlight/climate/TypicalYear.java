package org.marshlight.climate;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPInputStream;

/** The typical year that the tests carry; its provenance stands beside it. */
public final class TypicalYear {

  private static final String FILE = "/weather/seattle-tacoma-tmy3.epw.gz";

  private TypicalYear() {}

  /** Its lines. */
  public static List<String> lines() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                new GZIPInputStream(TypicalYear.class.getResourceAsStream(FILE)),
                StandardCharsets.US_ASCII))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file as read. */
  public static WeatherReading reading() {
    return WeatherFile.read(String.join("\n", lines()).getBytes(StandardCharsets.US_ASCII));
  }
}
