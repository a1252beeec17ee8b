package org.marshlight.climate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.marshlight.evidence.DataFile;
import org.marshlight.evidence.Mark;

/** The catalogue of climates, each a public weather station's typical year. */
public final class BuiltInClimates {

  private static final double ANEMOMETER_HEIGHT_M = 10.0;
  private static final BuiltInClimates STANDARD = load();

  private final Map<String, BuiltInClimate> byId;

  private BuiltInClimates(Map<String, BuiltInClimate> byId) {
    this.byId = byId;
  }

  /** The engine's own catalogue. */
  public static BuiltInClimates standard() {
    return STANDARD;
  }

  /** All climates, by id in alphabetical order. */
  public Collection<BuiltInClimate> all() {
    return byId.values();
  }

  /** The ids, in alphabetical order. */
  public Set<String> ids() {
    return byId.keySet();
  }

  public Optional<BuiltInClimate> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  private static BuiltInClimates load() {
    Map<String, Map<String, List<Double>>> monthly = new LinkedHashMap<>();
    for (CSVRecord row : DataFile.rows(BuiltInClimates.class, "climates-monthly.csv")) {
      List<Double> values = new ArrayList<>();
      for (int column = 2; column < row.size(); column++) {
        values.add(Double.valueOf(row.get(column)));
      }
      monthly
          .computeIfAbsent(row.get("id"), id -> new LinkedHashMap<>())
          .put(row.get("quantity"), List.copyOf(values));
    }
    Map<String, BuiltInClimate> byId = new TreeMap<>();
    for (CSVRecord row : DataFile.rows(BuiltInClimates.class, "climates.csv")) {
      byId.put(row.get("id"), climate(row, monthly.get(row.get("id"))));
    }
    return new BuiltInClimates(Collections.unmodifiableMap(byId));
  }

  private static BuiltInClimate climate(CSVRecord row, Map<String, List<Double>> monthly) {
    return new BuiltInClimate(
        row.get("id"),
        row.get("name"),
        row.get("kind"),
        Double.parseDouble(row.get("latitudeDeg")),
        Double.parseDouble(row.get("longitudeDeg")),
        Double.parseDouble(row.get("elevationM")),
        row.get("source"),
        Mark.ofWords(row.get("mark")).words(),
        given(row.get("rainSource")),
        row.get("rainMark").isEmpty() ? null : Mark.ofWords(row.get("rainMark")).words(),
        row.get("note"),
        new MonthlyNormals(
            monthly.get("meanAirTemperatureC"),
            monthly.get("meanMaxAirTemperatureC"),
            monthly.get("meanMinAirTemperatureC"),
            monthly.get("horizontalSolarKWhM2Day"),
            monthly.get("windMS"),
            ANEMOMETER_HEIGHT_M,
            null,
            monthly.get("dewPointC"),
            monthly.get("rainMm")));
  }

  private static String given(String cell) {
    return cell.isEmpty() ? null : cell;
  }
}
