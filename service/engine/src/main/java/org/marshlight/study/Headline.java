package org.marshlight.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.WireName;
import org.marshlight.evidence.DataFile;

/**
 * A figure that clients may rely on, listed in {@code headlines.csv}.
 *
 * @param name stable name
 * @param pointer pointer to it, or to the twelve months it is taken from, in an estimate
 * @param of how one number is taken from twelve months
 * @param group which headlines go together
 * @param error where the figure's own error comes from
 */
record Headline(String name, String pointer, Figure.Reduction of, Group group, StageError error) {

  /** Which headlines go together. */
  enum Group {
    /** The few that tell most. */
    KEY,
    /** The others of the stages that are one number a year. */
    ANNUAL,
    /** Money, gases, energy returned and work, which want what verdicts want. */
    DECISION,
    /** Twelve numbers, a month each. */
    MONTHLY
  }

  private static final List<Headline> ALL =
      DataFile.rows(Headline.class, "headlines.csv").stream().map(Headline::read).toList();

  /** Every headline, in the order of the flow. */
  static List<Headline> all() {
    return ALL;
  }

  /** The names of all that are one number. */
  static List<String> names() {
    return ALL.stream().map(Headline::name).toList();
  }

  /** Every pointer of the headline: one, or one for each month. */
  List<String> pointers() {
    return group == Group.MONTHLY
        ? IntStream.range(0, 12).mapToObj(m -> Pointer.child(pointer, m)).toList()
        : List.of(pointer);
  }

  private static Headline read(CSVRecord row) {
    return new Headline(
        row.get("name"),
        row.get("pointer"),
        choice(Figure.Reduction.class, row.get("of")),
        choice(Group.class, row.get("group")),
        choice(StageError.class, row.get("error")));
  }

  private static <E extends Enum<E>> E choice(Class<E> type, String name) {
    return WireName.parse(type, name)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    name
                        + " is none of "
                        + Arrays.stream(type.getEnumConstants())
                            .map(WireName::of)
                            .collect(Collectors.joining(", "))));
  }
}
