package org.marshlight.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.marshlight.contract.WireName;

/**
 * Every coefficient of the engine, by id. Each has an ordinal, fixed at start, under which its
 * value stands in a {@link CoefficientSet}.
 */
public final class CoefficientBook {

  private static final CoefficientBook STANDARD = load();

  private final List<CoefficientRow> rows;
  private final Map<String, Integer> ordinals;
  private final CoefficientSet central;

  private CoefficientBook(Map<String, CoefficientRow> byId) {
    rows = List.copyOf(byId.values());
    Map<String, Integer> numbered = new TreeMap<>();
    double[] values = new double[rows.size()];
    for (int i = 0; i < values.length; i++) {
      numbered.put(rows.get(i).id(), i);
      values[i] = rows.get(i).value();
    }
    ordinals = Collections.unmodifiableMap(numbered);
    central = new CoefficientSet(this, values, new boolean[values.length]);
  }

  /** The engine's own book. */
  public static CoefficientBook standard() {
    return STANDARD;
  }

  /** All rows, by id in alphabetical order; a row's place is its ordinal. */
  public List<CoefficientRow> rows() {
    return rows;
  }

  public Optional<CoefficientRow> find(String id) {
    return Optional.ofNullable(ordinals.get(id)).map(rows::get);
  }

  /**
   * The ordinal of a coefficient.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  public int ordinal(String id) {
    Integer ordinal = ordinals.get(id);
    if (ordinal == null) {
      throw new IllegalArgumentException("no coefficient " + id);
    }
    return ordinal;
  }

  /** Every coefficient at its central value. */
  public CoefficientSet central() {
    return central;
  }

  /**
   * The coefficient records of a package's models.
   *
   * @param packageName last name of the package, for instance {@code digester}
   */
  public static List<Class<? extends Record>> recordsOf(String packageName) {
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      if (shelf.getClass().getPackageName().equals("org.marshlight." + packageName)) {
        return shelf.coefficientRecords();
      }
    }
    return List.of();
  }

  private static CoefficientBook load() {
    Map<String, CoefficientRow> byId = new TreeMap<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      List<CSVRecord> records =
          new ArrayList<>(DataFile.rowsIfPresent(shelf.getClass(), "coefficients.csv"));
      for (String catalogue : shelf.catalogues()) {
        records.addAll(DataFile.rowsIfPresent(shelf.getClass(), catalogue + "-values.csv"));
      }
      for (CSVRecord record : records) {
        CoefficientRow row = row(record);
        if (byId.put(row.id(), row) != null) {
          throw new IllegalStateException("coefficient listed twice: " + row.id());
        }
      }
    }
    return new CoefficientBook(byId);
  }

  private static CoefficientRow row(CSVRecord record) {
    try {
      return new CoefficientRow(
          record.get("id"),
          record.get("symbol"),
          Double.parseDouble(record.get("value")),
          Double.parseDouble(record.get("low")),
          Double.parseDouble(record.get("high")),
          Double.parseDouble(record.get("least")),
          Double.parseDouble(record.get("most")),
          WireName.parse(Distribution.class, record.get("distribution")).orElseThrow(),
          record.get("unit"),
          record.get("source"),
          Mark.ofWords(record.get("mark")).words(),
          record.get("note"));
    } catch (RuntimeException e) {
      throw new IllegalStateException("bad coefficient row " + record, e);
    }
  }
}
