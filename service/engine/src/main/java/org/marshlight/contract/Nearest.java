package org.marshlight.contract;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * The known name nearest to one that was misspelt. Whoever asks may have sent hundreds of names, so
 * each costs little: most of the known ones are ruled out by their letters alone.
 */
public final class Nearest {

  /** Said where no known name is near. */
  public static final String NONE = "none";

  /** Longer than any name of the product; what is longer is no misspelling of one. */
  static final int LONGEST_NAME = 80;

  /** Letters that are counted apart; rarer ones share a place, which only makes the bound lower. */
  private static final int LETTERS = 128;

  private final String name;
  private final int[] letters;
  private String best;
  private int fewest;

  private Nearest(String name) {
    this.name = name;
    this.letters = counted(name);
    this.fewest = LONGEST_NAME;
  }

  /**
   * The known name with the fewest edits from a given one; of several, the first in the alphabet.
   *
   * @return none where nothing is known, or the given name is longer than {@value #LONGEST_NAME}
   *     characters
   */
  public static Optional<String> to(String name, Collection<String> known) {
    if (name.length() > LONGEST_NAME) {
      return Optional.empty();
    }
    Nearest nearest = new Nearest(name);
    known.forEach(nearest::consider);
    return Optional.ofNullable(nearest.best);
  }

  private void consider(String candidate) {
    if (atLeast(candidate) > fewest) {
      return;
    }
    int edits = new LevenshteinDistance(fewest).apply(name, candidate);
    boolean nearer = edits >= 0 && (best == null || edits < fewest);
    if (nearer || edits == fewest && candidate.compareTo(best) < 0) {
      best = candidate;
      fewest = edits;
    }
  }

  /** Edits that it takes at the least: one edit changes the count of two letters at the most. */
  private int atLeast(String candidate) {
    int[] others = counted(candidate);
    int more = 0;
    int less = 0;
    for (int letter = 0; letter < LETTERS; letter++) {
      int difference = letters[letter] - others[letter];
      more += Math.max(0, difference);
      less += Math.max(0, -difference);
    }
    return Math.max(more, less);
  }

  private static int[] counted(String text) {
    int[] counts = new int[LETTERS];
    for (int i = 0; i < text.length(); i++) {
      counts[text.charAt(i) % LETTERS]++;
    }
    return counts;
  }
}
