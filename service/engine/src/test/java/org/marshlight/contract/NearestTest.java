package org.marshlight.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.junit.jupiter.api.Test;

class NearestTest {

  private static final List<String> KNOWN = IntStream.range(0, 300).mapToObj(i -> word(i)).toList();

  private static String word(int seed) {
    Random random = new Random(seed);
    StringBuilder word = new StringBuilder();
    for (int length = 1 + random.nextInt(20); length > 0; length--) {
      word.append((char) ('a' + random.nextInt(6)));
    }
    return word.toString();
  }

  /** Against the plain edit distance of Apache Commons Text, without any short cut. */
  @Test
  void shortCutsFindWhatEveryComparisonFinds() {
    LevenshteinDistance plain = LevenshteinDistance.getDefaultInstance();
    for (int seed = 1000; seed < 1200; seed++) {
      String sent = word(seed);
      String expected =
          KNOWN.stream()
              .min(
                  java.util.Comparator.<String>comparingInt(k -> plain.apply(sent, k))
                      .thenComparing(java.util.Comparator.naturalOrder()))
              .orElseThrow();
      assertThat(Nearest.to(sent, KNOWN)).contains(expected);
    }
  }

  @Test
  void whatIsLongerThanAnyNameHasNoNearest() {
    assertThat(Nearest.to("a".repeat(Nearest.LONGEST_NAME), KNOWN)).isPresent();
    assertThat(Nearest.to("a".repeat(Nearest.LONGEST_NAME + 1), KNOWN)).isEmpty();
    assertThat(Nearest.to("a", List.of())).isEmpty();
  }
}
