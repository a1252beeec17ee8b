package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Sentences;
import org.marshlight.study.Figure.Reduction;

/**
 * One target with the figure it is about.
 *
 * @param figure the figure; of twelve months, the worst
 * @param least whether the bound is a least value
 * @param bound the bound
 */
record Goal(Figure figure, boolean least, double bound) {

  private static final double SMALLEST_SCALE = 1e-9;

  /**
   * The goals of some targets.
   *
   * @param targets targets
   * @param base a run of the plan
   * @param faults receives targets that make no sense or contradict each other
   */
  static List<Goal> of(List<Target> targets, Outcome base, List<Fault> faults) {
    List<Goal> goals = new ArrayList<>();
    for (int i = 0; i < targets.size(); i++) {
      String at = Pointer.child("/targets", i);
      Target target = targets.get(i);
      if ((target.atLeast() == null) == (target.atMost() == null)) {
        faults.add(Fault.of("study.one-bound", at, null, "exactly one of atLeast and atMost"));
        continue;
      }
      boolean least = target.atLeast() != null;
      Figure figure = figure(target.figure(), least, base, at + "/figure", faults);
      if (figure != null) {
        Goal goal = new Goal(figure, least, least ? target.atLeast() : target.atMost());
        goal.possible(at, faults);
        goal.agrees(goals, at, faults);
        goals.add(goal);
      }
    }
    return goals;
  }

  private static Figure figure(
      String word, boolean least, Outcome base, String at, List<Fault> faults) {
    Reduction worst = least ? Reduction.LEAST : Reduction.GREATEST;
    if (word.startsWith("/")) {
      List<Figure> figures = Figure.find(word, base, at, faults);
      if (figures.size() > 1) {
        return figures.get(0).as(word, word, worst, StageError.NONE);
      }
      return figures.isEmpty() ? null : figures.get(0);
    }
    for (Headline headline : Headline.all()) {
      if (headline.name().equals(word) && headline.group() == Headline.Group.MONTHLY) {
        return figure(headline.pointer(), least, base, at, faults);
      }
    }
    return Figures.one(word, base, at, faults);
  }

  private String place(String at) {
    return at + (least ? "/atLeast" : "/atMost");
  }

  /** A bound beyond what the figure can be at all is a fault. */
  private void possible(String at, List<Fault> faults) {
    if (least ? bound > figure.high() : bound < figure.low()) {
      faults.add(
          Fault.of(
              "study.impossible-target",
              place(at),
              bound,
              possibleValues(),
              "figure",
              figure.name(),
              "possible",
              possibleValues()));
    }
  }

  /** What the figure can be; a figure may have a bound on one side only. */
  private String possibleValues() {
    if (Double.isInfinite(figure.high())) {
      return "at least " + Sentences.number(figure.low());
    }
    return Double.isInfinite(figure.low())
        ? "at most " + Sentences.number(figure.high())
        : Sentences.number(figure.low()) + " to " + Sentences.number(figure.high());
  }

  /** A greatest value below a least one of the same figure is a fault. */
  private void agrees(List<Goal> others, String at, List<Fault> faults) {
    for (Goal other : others) {
      boolean same = other.figure.path().equals(figure.path()) && other.least != least;
      double lower = least ? bound : other.bound;
      double upper = least ? other.bound : bound;
      if (same && lower > upper) {
        faults.add(
            Fault.of(
                "study.contradicting-targets",
                place(at),
                bound,
                least
                    ? "at most " + Sentences.number(upper)
                    : "at least " + Sentences.number(lower),
                "figure",
                figure.name(),
                "atLeast",
                lower,
                "atMost",
                upper));
      }
    }
  }

  /** How far a run falls short, over the size of the bound; nought or less if it is met. */
  double shortfall(Outcome outcome) {
    double value = figure.value(outcome);
    if (Double.isNaN(value)) {
      return Double.POSITIVE_INFINITY;
    }
    return (least ? bound - value : value - bound) / Math.max(Math.abs(bound), SMALLEST_SCALE);
  }
}
