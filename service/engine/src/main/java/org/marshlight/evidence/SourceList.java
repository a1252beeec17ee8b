package org.marshlight.evidence;

import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;

/** Every source named by a formula, a coefficient, a catalogue or a caution, by id. */
public final class SourceList {

  private static final SourceList STANDARD = load();

  private final Map<String, Source> byId;

  private SourceList(Map<String, Source> byId) {
    this.byId = byId;
  }

  /** The engine's own list. */
  public static SourceList standard() {
    return STANDARD;
  }

  /** All sources, by id in alphabetical order. */
  public Collection<Source> all() {
    return byId.values();
  }

  public Optional<Source> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  private static SourceList load() {
    Map<String, Source> byId = new TreeMap<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      for (CSVRecord row : DataFile.rowsIfPresent(shelf.getClass(), "sources.csv")) {
        Source source =
            new Source(
                row.get("id"), row.get("citation"), row.get("read").equals("yes"), row.get("note"));
        if (byId.put(source.id(), source) != null) {
          throw new IllegalStateException("source listed twice: " + source.id());
        }
      }
    }
    return new SourceList(Collections.unmodifiableMap(byId));
  }
}
