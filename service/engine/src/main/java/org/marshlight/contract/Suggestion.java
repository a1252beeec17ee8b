package org.marshlight.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * What to offer in place of a name that is not known: one that is spelt almost the same, begins
 * with it or shares a word with it, and nothing where there is none, for a far-fetched offer
 * misleads.
 */
public final class Suggestion {

  private static final int LONGEST_NAME = 100;
  private static final int SHORTEST_WORD = 4;

  /** Sharing a word says little among so many names, and looking for it would take long. */
  private static final int MOST_NAMES_BY_WORD = 300;

  /** Longer lists are not repeated in a sentence. */
  private static final int MOST_NAMES_LISTED = 20;

  private static final Properties ALSO_CALLED = alsoCalled();

  private Suggestion() {}

  /**
   * The known name that was probably meant.
   *
   * @param name what was sent
   * @param known the known names
   * @return the name; empty if none is close
   */
  public static Optional<String> closeTo(String name, Collection<String> known) {
    Optional<String> spelt =
        Nearest.to(name, known)
            .filter(near -> isAlmost(name, near))
            .or(() -> Nearest.to(name, beginningWith(name, known)));
    return spelt.isPresent() || known.size() > MOST_NAMES_BY_WORD
        ? spelt
        : Nearest.to(name, sharingMostWords(name, known));
  }

  /**
   * A sentence that offers the name that was probably meant, or else lists the known ones.
   *
   * @param name what was sent
   * @param known the known names
   */
  public static String sentence(String name, Collection<String> known) {
    return closeTo(name, known)
        .map(near -> "Did you mean " + near + "?")
        .orElseGet(() -> listed(known));
  }

  private static String listed(Collection<String> known) {
    return known.size() > MOST_NAMES_LISTED
        ? "None of the " + known.size() + " known names is close to it."
        : "Allowed: " + String.join(", ", known) + ".";
  }

  /** A third of the letters may differ; two of a short name, so that swapped letters are found. */
  private static boolean isAlmost(String name, String known) {
    if (name.length() > LONGEST_NAME) {
      return false;
    }
    int most = name.length() < SHORTEST_WORD ? 1 : Math.max(2, name.length() / 3);
    return new LevenshteinDistance(most).apply(name, known) >= 0;
  }

  private static List<String> beginningWith(String name, Collection<String> known) {
    return name.length() < SHORTEST_WORD
        ? List.of()
        : known.stream().filter(other -> other.startsWith(name)).toList();
  }

  private static List<String> sharingMostWords(String name, Collection<String> known) {
    Set<String> words = words(name);
    long most = known.stream().mapToLong(other -> shared(words, other)).max().orElse(0);
    return most == 0
        ? List.of()
        : known.stream().filter(other -> shared(words, other) == most).toList();
  }

  private static long shared(Set<String> words, String known) {
    Set<String> both = new HashSet<>(words);
    both.retainAll(words(known));
    return both.size();
  }

  /** The words of a name, each as the catalogues call it. */
  private static Set<String> words(String name) {
    String bounded = name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name;
    return Arrays.stream(bounded.split("[^A-Za-z]+|(?<=[a-z])(?=[A-Z])"))
        .map(word -> word.toLowerCase(Locale.ROOT))
        .map(word -> ALSO_CALLED.getProperty(word, word))
        .filter(word -> word.length() >= SHORTEST_WORD)
        .collect(Collectors.toSet());
  }

  private static Properties alsoCalled() {
    Properties words = new Properties();
    try (InputStream stream = Suggestion.class.getResourceAsStream("also-called.properties")) {
      words.load(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return words;
  }
}
