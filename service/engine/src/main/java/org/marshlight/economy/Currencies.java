package org.marshlight.economy;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.marshlight.evidence.DataFile;

/**
 * Codes of the currencies in use by ISO 4217. They stand in a file of the product's own, since the
 * list of the Java platform differs with its version and can be changed on each machine.
 */
final class Currencies {

  private static final Set<String> CODES = load();

  private Currencies() {}

  /** All codes, in alphabetical order. */
  static Collection<String> codes() {
    return CODES;
  }

  private static Set<String> load() {
    Set<String> codes = new LinkedHashSet<>();
    DataFile.rows(Currencies.class, "currencies.csv").forEach(row -> codes.add(row.get("code")));
    return java.util.Collections.unmodifiableSet(codes);
  }
}
