package org.marshlight.http.drawing;

import java.util.List;

/**
 * Twelve values that are drawn alike.
 *
 * @param name what they are
 * @param kind how they are drawn
 * @param values January first; null where there is none
 */
public record Series(String name, Kind kind, List<Double> values) {

  /** How values are drawn. */
  public enum Kind {
    /** A line through marks. */
    LINE,
    /** Bars, stacked on those before them, below nought if they are. */
    BAR,
    /** A level that should not be passed. */
    LIMIT
  }

  public Series {
    values = java.util.Collections.unmodifiableList(new java.util.ArrayList<>(values));
  }

  /** Whether every value is nought or missing. */
  public boolean empty() {
    return values.stream().allMatch(value -> value == null || Math.abs(value) < 1e-9);
  }
}
