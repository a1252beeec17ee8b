package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Pointer;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.Defaults;

/**
 * A study's own settings with their defaults filled.
 *
 * @param request the request, filled
 * @param assumptions what was filled
 */
record Settings<R extends Record>(R request, List<Assumption> assumptions) {

  static <R extends Record> Settings<R> of(R request) {
    Defaults defaults = new Defaults(CoefficientBook.standard().central());
    R filled = defaults.fill(request, Pointer.ROOT);
    return new Settings<>(filled, defaults.assumptions());
  }

  /** A list of records with their own defaults filled; empty if there is none. */
  static <R extends Record> List<R> each(List<R> records) {
    Defaults defaults = new Defaults(CoefficientBook.standard().central());
    List<R> filled = new ArrayList<>();
    for (R record : records == null ? List.<R>of() : records) {
      filled.add(defaults.fill(record, Pointer.ROOT));
    }
    return List.copyOf(filled);
  }
}
