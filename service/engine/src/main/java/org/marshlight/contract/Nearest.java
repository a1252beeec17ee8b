package org.marshlight.contract;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known name nearest to one that was misspelt. */
public final class Nearest {

  private Nearest() {}

  /**
   * The known name with the fewest edits from a given one; of several, the first in the alphabet.
   */
  public static Optional<String> to(String name, Collection<String> known) {
    LevenshteinDistance distance = LevenshteinDistance.getDefaultInstance();
    String bounded = name.length() > 100 ? name.substring(0, 100) : name;
    return known.stream()
        .min(
            Comparator.<String>comparingInt(k -> distance.apply(bounded, k))
                .thenComparing(Comparator.naturalOrder()));
  }
}
