package org.marshlight.safety;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.marshlight.contract.WireName;
import org.marshlight.evidence.DataFile;

/** Every caution of the product, by id. */
public final class CautionBook {

  /** Cautions that stand on every response, whatever it answers. */
  public static final List<String> ALWAYS =
      List.of("methane-explosion", "tank-atmosphere", "pathogens", "local-codes");

  /** Cautions that also stand wherever fuel alcohol is made or may be asked about. */
  public static final List<String> WITH_FUEL =
      List.of("ethanol-fire", "distilling", "ethanol-poisoning", "permits");

  private static final CautionBook STANDARD = load();

  private final Map<String, Caution> byId;

  private CautionBook(Map<String, Caution> byId) {
    this.byId = byId;
  }

  /** The product's own book. */
  public static CautionBook standard() {
    return STANDARD;
  }

  /** All cautions, in the order of their file: the gravest first. */
  public List<Caution> all() {
    return List.copyOf(byId.values());
  }

  public Optional<Caution> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The cautions of those ids. */
  public List<Caution> pick(List<String> ids) {
    return ids.stream().map(byId::get).toList();
  }

  /** What goes with a response of which nothing is known but that it is one of ours. */
  public List<Caution> general() {
    List<String> ids = new ArrayList<>(ALWAYS);
    ids.addAll(WITH_FUEL);
    return pick(ids);
  }

  /**
   * The cautions of several plans together: each once, in the order of this book. Of one that
   * several plans raise, the first plan's is taken, with that plan's own numbers in its text.
   *
   * @param raised the cautions of each plan
   */
  public List<Caution> joined(List<List<Caution>> raised) {
    Map<String, Caution> first = new HashMap<>();
    raised.forEach(
        cautions -> cautions.forEach(caution -> first.putIfAbsent(caution.id(), caution)));
    return byId.keySet().stream().map(first::get).filter(Objects::nonNull).toList();
  }

  private static CautionBook load() {
    Map<String, Caution> byId = new LinkedHashMap<>();
    for (CSVRecord row : DataFile.rows(CautionBook.class, "cautions.csv")) {
      Caution caution =
          new Caution(
              row.get("id"),
              row.get("id"),
              WireName.parse(Caution.Severity.class, row.get("severity")).orElseThrow(),
              row.get("hazard"),
              row.get("text"),
              row.get("raisedBy"),
              row.get("source"),
              Map.of());
      byId.put(caution.id(), caution);
    }
    return new CautionBook(Collections.unmodifiableMap(byId));
  }
}
