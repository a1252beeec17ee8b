package org.marshlight.evidence;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;

/** The catalogues whose items are numbers by name: feeds, plants, soils, ingredients, fuels. */
public final class Catalogues {

  private static final Catalogues STANDARD = load();

  private final Map<String, Map<String, CatalogueItem>> byName;

  private Catalogues(Map<String, Map<String, CatalogueItem>> byName) {
    this.byName = byName;
  }

  /** The engine's own catalogues. */
  public static Catalogues standard() {
    return STANDARD;
  }

  /** Names of the catalogues. */
  public Set<String> names() {
    return byName.keySet();
  }

  /** The items of a catalogue, in the order of its file. */
  public Collection<CatalogueItem> items(String catalogue) {
    return byName.getOrDefault(catalogue, Map.of()).values();
  }

  /** The ids of a catalogue, in the order of its file. */
  public Set<String> ids(String catalogue) {
    return byName.getOrDefault(catalogue, Map.of()).keySet();
  }

  public Optional<CatalogueItem> find(String catalogue, String id) {
    return Optional.ofNullable(byName.getOrDefault(catalogue, Map.of()).get(id));
  }

  private static Catalogues load() {
    Map<String, Map<String, CatalogueItem>> byName = new TreeMap<>();
    for (EvidenceShelf shelf : EvidenceShelves.all()) {
      for (String catalogue : shelf.catalogues()) {
        Map<String, CatalogueItem> items = new LinkedHashMap<>();
        for (CSVRecord row : DataFile.rows(shelf.getClass(), catalogue + ".csv")) {
          CatalogueItem item = item(catalogue, row);
          if (items.put(item.id(), item) != null) {
            throw new IllegalStateException(catalogue + " lists twice: " + item.id());
          }
        }
        byName.put(catalogue, Collections.unmodifiableMap(items));
      }
    }
    return new Catalogues(Collections.unmodifiableMap(byName));
  }

  private static CatalogueItem item(String catalogue, CSVRecord row) {
    String id = row.get("id");
    String prefix = catalogue + "." + id + ".";
    Map<String, CoefficientRow> values = new LinkedHashMap<>();
    for (CoefficientRow coefficient : CoefficientBook.standard().rows()) {
      if (coefficient.id().startsWith(prefix)) {
        values.put(coefficient.id().substring(prefix.length()), coefficient);
      }
    }
    return new CatalogueItem(
        id,
        row.get("name"),
        row.get("kind"),
        row.get("source"),
        Mark.ofWords(row.get("mark")).words(),
        row.get("note"),
        Collections.unmodifiableMap(values));
  }
}
