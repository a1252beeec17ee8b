package org.marshlight.http.words;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;

/**
 * The units that people read in place of UCUM codes, from {@code units.csv}. A few units of the
 * contract have several counterparts: water is told in gallons, gas in cubic feet; which one is
 * chosen by where the number stands.
 */
public final class UnitBook {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();

  private static final Map<String, String> PRINTED =
      Map.ofEntries(
          Map.entry("1", ""),
          Map.entry("a", "years"),
          Map.entry("d", "days"),
          Map.entry("deg", "\u00b0"),
          Map.entry("/a", "a year"),
          Map.entry("/d", "a day"),
          Map.entry("1/d", "a day"),
          Map.entry("d/a", "days a year"),
          Map.entry("h/d", "hours a day"),
          Map.entry("h/a", "hours a year"),
          Map.entry("[ppm]", "ppm"),
          Map.entry("%{vol}", "% by volume"),
          Map.entry("{CFU}/dL", "CFU/100 mL"));

  private static final List<Row> ROWS = read();

  private UnitBook() {}

  /**
   * The unit in which a number is shown.
   *
   * @param ucum UCUM code of the number
   * @param place dotted path, pointer or id of the number
   * @param system system of units
   */
  public static Unit of(String ucum, String place, UnitSystem system) {
    if (system == UnitSystem.US_CUSTOMARY) {
      for (Row row : ROWS) {
        if (row.ucum().equals(ucum) && row.where().matcher(place).find()) {
          return row.unit();
        }
      }
    }
    return Unit.same(ucum, printed(ucum));
  }

  /** The book as the page's scripts read it. */
  public static Map<String, Object> forScripts() {
    List<Map<String, Object>> rows = new ArrayList<>();
    Map<String, String> names = new TreeMap<>(PRINTED);
    for (Row row : ROWS) {
      names.put(row.ucum(), printed(row.ucum()));
      rows.add(
          Map.of(
              "ucum", row.ucum(),
              "where", row.where().pattern(),
              "printed", row.unit().printed(),
              "times", row.unit().times(),
              "over", row.unit().over(),
              "offset", row.unit().offset()));
    }
    names.put("kW.h", printed("kW.h"));
    return Map.of("rows", rows, "printed", names);
  }

  /** A UCUM code as people write it. */
  static String printed(String ucum) {
    return PRINTED.getOrDefault(
        ucum,
        ucum.replace("Cel", "\u00b0C")
            .replace("kW.h", "kWh")
            .replaceAll("^1/\\((.*)\\)$", "per $1")
            .replaceAll("^1/(.+)$", "per $1")
            .replaceAll("m2\\b", "m\u00b2")
            .replaceAll("m3\\b", "m\u00b3")
            .replaceAll("\\bhar\\b", "ha")
            .replaceAll("/\\(?a\\)?$", " a year")
            .replaceAll("\\.d\\)$", " day)")
            .replaceAll("/d$", " a day")
            .replace('.', '\u00b7')
            .replaceAll("\u00b7(?=day)| (?=day\\))", "\u00b7")
            .replaceAll("[{}]", ""));
  }

  private static List<Row> read() {
    List<Row> rows = new ArrayList<>();
    try (Reader reader =
        new InputStreamReader(
            UnitBook.class.getResourceAsStream("units.csv"), StandardCharsets.UTF_8)) {
      FORMAT
          .parse(reader)
          .forEach(
              row ->
                  rows.add(
                      new Row(
                          row.get("ucum"),
                          Pattern.compile(row.get("where"), Pattern.CASE_INSENSITIVE),
                          new Unit(
                              row.get("usUcum"),
                              row.get("usPrinted"),
                              Double.parseDouble(row.get("times")),
                              Double.parseDouble(row.get("over")),
                              Double.parseDouble(row.get("offset"))))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(rows);
  }

  private record Row(String ucum, Pattern where, Unit unit) {}
}
