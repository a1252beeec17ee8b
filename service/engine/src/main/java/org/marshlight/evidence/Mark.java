package org.marshlight.evidence;

import org.marshlight.contract.WireName;

/** How well founded a number is. */
public enum Mark {
  /** Read in the source named, or in a faithful copy of it. */
  PUBLISHED,
  /** A fact of the trade without a single source. */
  COMMON_PRACTICE,
  /** Recalled from the source named and not read again. */
  FROM_MEMORY,
  /** Computed from other marked numbers. */
  DERIVED,
  /** A judgement; its range admits it. */
  ASSUMED,
  /** Made up for a demonstration. */
  INVENTED;

  /** The words used in files and answers, for instance {@code from memory}. */
  public String words() {
    return WireName.of(this).replace('-', ' ');
  }

  /**
   * The mark of those words.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Mark ofWords(String words) {
    return WireName.parse(Mark.class, words.replace(' ', '-'))
        .orElseThrow(() -> new IllegalArgumentException("no such mark: " + words));
  }
}
