package org.marshlight.climate;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;

/**
 * An hourly weather file, EPW or TMY3 text, reduced to what a plan can hold. Ground temperatures in
 * the headers of such files are averages over depth, computed and not measured: they are not read.
 */
public final class WeatherFile {

  private static final int LEAST_PRINTABLE = 9;
  private static final int GREATEST_ASCII = 126;

  private WeatherFile() {}

  /**
   * Reads a file.
   *
   * @param bytes the file as sent
   * @throws Faults if it is not a whole, ordered, hourly year of 365 days in plain ASCII; each
   *     names its line
   */
  public static WeatherReading read(byte[] bytes) {
    plainAscii(bytes);
    List<String> lines =
        new String(bytes, StandardCharsets.US_ASCII).lines().map(String::stripTrailing).toList();
    if (lines.isEmpty() || lines.get(0).isBlank()) {
      throw refused("climate.weather-file-empty", 1, "an EPW or TMY3 file");
    }
    return lines.get(0).startsWith("LOCATION,") ? EpwFormat.read(lines) : Tmy3Format.read(lines);
  }

  private static void plainAscii(byte[] bytes) {
    int line = 1;
    for (byte b : bytes) {
      int character = b & 0xff;
      if (character > GREATEST_ASCII || character < LEAST_PRINTABLE) {
        throw refused("climate.weather-file-not-ascii", line, "plain ASCII text");
      }
      if (b == '\n') {
        line++;
      }
    }
  }

  /** A refusal that names a line of the file. */
  static Faults refused(String code, int line, String allowed, Object... more) {
    Object[] params = new Object[more.length + 2];
    params[0] = "line";
    params[1] = line;
    System.arraycopy(more, 0, params, 2, more.length);
    return new Faults(List.of(Fault.of(code, "", null, allowed, params)));
  }
}
