package org.marshlight.evidence;

import java.util.List;

/**
 * One package's contribution to the books, found by {@link java.util.ServiceLoader}.
 *
 * <p>Beside the shelf's class stand the package's data files: {@code sources.csv}, {@code
 * coefficients.csv} and one {@code <catalogue>.csv} for each catalogue named here. Each is optional
 * but the last.
 */
public interface EvidenceShelf {

  /** Classes that hold formulas. */
  default List<Class<?>> formulas() {
    return List.of();
  }

  /** Records that the package's models fill from the coefficient book. */
  default List<Class<? extends Record>> coefficientRecords() {
    return List.of();
  }

  /** Names of the catalogues whose rows the package keeps. */
  default List<String> catalogues() {
    return List.of();
  }
}
