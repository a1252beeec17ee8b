package org.marshlight.http.words;

import java.util.List;
import java.util.Optional;
import org.marshlight.contract.WireName;

/** Systems of units in which pages, reports and tables can be read. JSON is always SI. */
public enum UnitSystem {
  SI,
  US_CUSTOMARY;

  /** Names on the wire, the usual one first. */
  public static List<String> names() {
    return WireName.all(UnitSystem.class);
  }

  /** The system of that name; SI for none. */
  public static Optional<UnitSystem> named(String name) {
    return name == null ? Optional.of(SI) : WireName.parse(UnitSystem.class, name);
  }

  /** Name on the wire. */
  public String wireName() {
    return WireName.of(this);
  }
}
