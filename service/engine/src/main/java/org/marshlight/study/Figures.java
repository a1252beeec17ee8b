package org.marshlight.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;
import org.marshlight.study.Headline.Group;

/**
 * The figures that a study follows.
 *
 * @param list the figures, each once
 * @param verdicts whether verdicts are followed too
 */
record Figures(List<Figure> list, boolean verdicts) {

  /** Word that asks for verdicts. */
  static final String VERDICTS = "verdicts";

  /** Word that asks for the headlines of the stages' year. */
  static final String ANNUAL = "annual";

  /** Word that asks for the headlines of money, gases, energy returned and work. */
  static final String DECISION = "decision";

  /** Word that asks for the headlines of each month. */
  static final String MONTHLY = "monthly";

  private static final int MOST = 300;

  /** The headlines of the stages' year that a plan has. */
  static Figures annual(Outcome base) {
    return of(List.of(ANNUAL), base, "/outputs");
  }

  /** The few headlines that tell most, as far as a plan has them. */
  static Figures key(Outcome base) {
    Map<String, Figure> found = new LinkedHashMap<>();
    group(Set.of(Group.KEY), base, found);
    return new Figures(List.copyOf(found.values()), false);
  }

  /**
   * The figures of some words: names of headlines, pointers into an estimate, or {@value #ANNUAL},
   * {@value #DECISION}, {@value #MONTHLY} and {@value #VERDICTS}.
   *
   * @param words what was asked for
   * @param base a run of the plan
   * @param at where the words stand in the request
   * @throws Faults for words that name nothing
   */
  static Figures of(List<String> words, Outcome base, String at) {
    Map<String, Figure> found = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>();
    boolean verdicts = false;
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      switch (word) {
        case VERDICTS -> verdicts = true;
        case ANNUAL -> group(Set.of(Group.KEY, Group.ANNUAL), base, found);
        case DECISION -> group(Set.of(Group.DECISION), base, found);
        case MONTHLY -> group(Set.of(Group.MONTHLY), base, found);
        default -> one(word, base, Pointer.child(at, i), found, faults);
      }
    }
    if (found.size() > MOST) {
      faults.add(
          Fault.of("study.too-many-figures", at, found.size(), "at most " + MOST, "most", MOST));
    }
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new Figures(List.copyOf(found.values()), verdicts);
  }

  /** The one figure of a word. */
  static Figure one(String word, Outcome base, String at, List<Fault> faults) {
    Map<String, Figure> found = new LinkedHashMap<>();
    one(word, base, at, found, faults);
    if (found.size() > 1) {
      faults.add(Fault.of("study.no-number", at, word, "a pointer to one number"));
    }
    return found.size() == 1 ? found.values().iterator().next() : null;
  }

  private static void group(Set<Group> groups, Outcome base, Map<String, Figure> found) {
    for (Headline headline : Headline.all()) {
      if (groups.contains(headline.group())) {
        add(headline, base, found);
      }
    }
  }

  private static void one(
      String word, Outcome base, String at, Map<String, Figure> found, List<Fault> faults) {
    if (word.startsWith("/")) {
      for (Figure figure : Figure.find(word, base, at, faults)) {
        Figure withError =
            figure.as(figure.name(), figure.pointer(), figure.of(), error(figure.pointer()));
        found.putIfAbsent(withError.name(), withError);
      }
      return;
    }
    for (Headline headline : Headline.all()) {
      if (headline.name().equals(word)) {
        if (!add(headline, base, found)) {
          faults.add(
              Fault.of(
                  "study.pointer-to-nothing", at, word, "a figure of this plan", "name", word));
        }
        return;
      }
    }
    List<String> known = new ArrayList<>(Headline.names());
    known.addAll(List.of(ANNUAL, DECISION, MONTHLY, VERDICTS));
    faults.add(
        Fault.unknown(
            "study.unknown-figure",
            at,
            word,
            word,
            known,
            "a pointer, or one of " + String.join(", ", known)));
  }

  /** Adds a headline as far as the plan has it. */
  private static boolean add(Headline headline, Outcome base, Map<String, Figure> found) {
    List<Figure> figures = Figure.find(headline.pointer(), base, "", new ArrayList<>());
    for (int i = 0; i < figures.size(); i++) {
      boolean months = headline.group() == Group.MONTHLY;
      if (!months && i > 0) {
        break;
      }
      String name = months ? headline.name() + "." + (i + 1) : headline.name();
      String pointer = headline.pointers().get(i);
      found.putIfAbsent(name, figures.get(i).as(name, pointer, headline.of(), headline.error()));
    }
    return !figures.isEmpty();
  }

  /** The error that the headlines name for a place of the estimate. */
  private static StageError error(String pointer) {
    for (Headline headline : Headline.all()) {
      if (headline.of() == Figure.Reduction.VALUE && headline.pointers().contains(pointer)) {
        return headline.error();
      }
    }
    return StageError.NONE;
  }

  /** The numbers of a run; NaN where it has none. */
  double[] values(Outcome outcome) {
    double[] values = new double[list.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = list.get(i).value(outcome);
    }
    return values;
  }

  /** Whether more is wanted than the stages alone give. */
  boolean whole() {
    return verdicts || list.stream().anyMatch(figure -> !STAGES.contains(figure.path().get(0)));
  }

  /** How many chain runs one run of the plan with these figures counts for. */
  int runsEach() {
    return whole() ? 1 + StudyCost.VERDICTS : 1;
  }

  private static final List<String> STAGES =
      List.of("digester", "wetland", "crop", "ethanol", "compost");
}
