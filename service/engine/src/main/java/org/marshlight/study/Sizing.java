package org.marshlight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Sentences;
import org.marshlight.decision.Reason;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanField;
import org.marshlight.study.SizeSearch.Found;
import org.marshlight.study.SizeSearch.Trial;
import org.marshlight.study.SizingStudy.Reach;

/**
 * Finds the smallest sizes that meet targets. Of two free numbers, the pair is taken whose shares
 * of their ranges add up to the least.
 */
final class Sizing implements PreparedStudy<SizingStudy> {

  private static final int STEPS_OF_ONE = 32;
  private static final int HALVINGS_OF_ONE = 14;
  private static final int STEPS_OF_TWO = 16;
  private static final int HALVINGS_OF_TWO = 9;
  private static final int ROWS = 13;

  private final SizingRequest request;
  private final BaseRun base;
  private final List<PlanField> fields;
  private final List<Goal> goals;
  private final SizeSearch search;
  private final StudyCost cost;

  private Sizing(SizingRequest request, BaseRun base, List<PlanField> fields, List<Goal> goals) {
    this.request = request;
    this.base = base;
    this.fields = fields;
    this.goals = goals;
    boolean two = fields.size() == 2;
    this.search =
        new SizeSearch(
            base,
            fields.get(0),
            request.free().get(0),
            two ? STEPS_OF_TWO : STEPS_OF_ONE,
            two ? HALVINGS_OF_TWO : HALVINGS_OF_ONE,
            goals);
    int each = new Figures(goals.stream().map(Goal::figure).toList(), false).runsEach();
    this.cost = StudyCost.of((long) (seconds().length) * search.runs() * each + 1);
  }

  static Sizing of(SizingRequest request) {
    List<Fault> faults = new ArrayList<>();
    List<PlanField> fields = new ArrayList<>();
    for (int i = 0; i < request.free().size(); i++) {
      fields.add(field(request, i, faults));
    }
    if (fields.size() == 2
        && request.free().get(0).pointer().equals(request.free().get(1).pointer())) {
      faults.add(
          Fault.of(
              "study.freed-twice",
              "/free/1/pointer",
              request.free().get(1).pointer(),
              "another number"));
    }
    BaseRun base = BaseRun.of(request.plan());
    List<Goal> goals = Goal.of(request.targets(), base.outcome(), faults);
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new Sizing(request, base, fields, goals);
  }

  private static PlanField field(SizingRequest request, int index, List<Fault> faults) {
    Freed freed = request.free().get(index);
    String at = Pointer.child("/free", index);
    PlanField field = PlanField.find(request.plan(), freed.pointer(), at + "/pointer", faults);
    if (!(freed.low() < freed.high())) {
      faults.add(
          Fault.of(
              "study.low-not-below-high",
              at + "/low",
              freed.low(),
              "less than " + Sentences.number(freed.high()),
              "high",
              freed.high()));
    } else if (field != null) {
      RangeWidth.check(freed.low(), freed.high(), field, at + "/high", faults);
    }
    if (field != null) {
      VariedFactor.within(freed.low(), field, at + "/low", faults);
      VariedFactor.within(freed.high(), field, at + "/high", faults);
      if (field.whole() && (freed.low() % 1 != 0 || freed.high() % 1 != 0)) {
        faults.add(Fault.of("study.whole-numbers", at, freed.low(), "whole numbers"));
      }
    }
    return field;
  }

  @Override
  public String costliestField() {
    return "/free";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  /** Values of the second number; one NaN if there is none. */
  private double[] seconds() {
    if (fields.size() == 1) {
      return new double[] {Double.NaN};
    }
    Freed freed = request.free().get(1);
    boolean whole = fields.get(1).whole();
    int rows = whole ? (int) Math.min(ROWS, freed.high() - freed.low() + 1) : ROWS;
    return IntStream.range(0, rows)
        .mapToDouble(row -> freed.low() + (freed.high() - freed.low()) * row / (rows - 1))
        .map(value -> whole ? Math.rint(value) : value)
        .toArray();
  }

  @Override
  public Studied<SizingStudy> run(Workbench bench) {
    double[] seconds = seconds();
    int scanned = search.scanned();
    List<Trial> scan =
        bench.each(
            seconds.length * scanned, 1, i -> search.scan(plan(seconds[i / scanned]), i % scanned));
    List<Found> found =
        bench.each(
            seconds.length,
            1,
            row ->
                search.search(
                    plan(seconds[row]), scan.subList(row * scanned, (row + 1) * scanned)));
    int best = best(found, seconds);
    boolean met = best >= 0;
    Trial told = met ? found.get(best).smallest() : nearest(found);
    List<SizingStudy.Pair> frontier = new ArrayList<>();
    for (int row = 0; fields.size() == 2 && row < seconds.length; row++) {
      Trial smallest = found.get(row).smallest();
      frontier.add(
          new SizingStudy.Pair(smallest == null ? null : (Double) smallest.value(), seconds[row]));
    }
    List<SizingStudy.Reached> reached = reached(found, told);
    SizingStudy study =
        new SizingStudy(
            cost,
            met ? Reach.MET : Reach.CANNOT,
            sizes(told),
            reached,
            met ? List.of() : reasons(reached),
            List.copyOf(frontier));
    List<Studied.Considered> considered =
        told.shortfall() < Double.POSITIVE_INFINITY
            ? List.of(new Studied.Considered(told.plan(), base.run(told.plan()).estimate()))
            : List.of();
    return new Studied<>(study, List.of(), List.of(), considered);
  }

  private Plan plan(double second) {
    return Double.isNaN(second) ? request.plan() : fields.get(1).with(request.plan(), second);
  }

  /** The row whose pair is smallest; -1 if none meets the goals. */
  private int best(List<Found> found, double[] seconds) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int row = 0; row < seconds.length; row++) {
      Trial smallest = found.get(row).smallest();
      if (smallest != null) {
        double size = share(0, smallest.value());
        size += fields.size() == 2 ? share(1, seconds[row]) : 0;
        if (size < least) {
          least = size;
          best = row;
        }
      }
    }
    return best;
  }

  private double share(int free, double value) {
    Freed freed = request.free().get(free);
    return (value - freed.low()) / (freed.high() - freed.low());
  }

  private static Trial nearest(List<Found> found) {
    return found.stream()
        .flatMap(row -> row.trials().stream())
        .min(Comparator.comparingDouble(Trial::shortfall))
        .orElseThrow();
  }

  private List<SizingStudy.Sized> sizes(Trial told) {
    List<SizingStudy.Sized> sizes = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      PlanField field = fields.get(i);
      double present = field.value(request.plan());
      sizes.add(
          new SizingStudy.Sized(
              field.pointer(),
              field.unit(),
              field.meaning(),
              field.value(told.plan()),
              orNull(present),
              request.free().get(i).low(),
              request.free().get(i).high()));
    }
    return List.copyOf(sizes);
  }

  private List<SizingStudy.Reached> reached(List<Found> found, Trial told) {
    List<SizingStudy.Reached> reached = new ArrayList<>();
    for (int i = 0; i < goals.size(); i++) {
      Goal goal = goals.get(i);
      int place = i;
      double[] all =
          found.stream()
              .flatMap(row -> row.trials().stream())
              .mapToDouble(trial -> trial.values()[place])
              .filter(value -> !Double.isNaN(value))
              .sorted()
              .toArray();
      double best = all.length == 0 ? Double.NaN : goal.least() ? all[all.length - 1] : all[0];
      double value = told.values()[i];
      boolean met = goal.least() ? value >= goal.bound() : value <= goal.bound();
      reached.add(
          new SizingStudy.Reached(
              goal.figure().name(),
              goal.figure().pointer(),
              goal.figure().unit(),
              goal.least() ? (Double) goal.bound() : null,
              goal.least() ? null : (Double) goal.bound(),
              orNull(goal.figure().value(base.outcome())),
              orNull(value),
              orNull(best),
              met));
    }
    return List.copyOf(reached);
  }

  private static Double orNull(double value) {
    return Double.isNaN(value) ? null : (Double) value;
  }

  private static List<Reason> reasons(List<SizingStudy.Reached> targets) {
    List<Reason> reasons = new ArrayList<>();
    for (SizingStudy.Reached target : targets) {
      boolean least = target.atLeast() != null;
      double bound = least ? target.atLeast() : target.atMost();
      if (target.best() == null) {
        reasons.add(Reason.of("study.cannot-no-value", "figure", target.figure()));
      } else if (least ? target.best() < bound : target.best() > bound) {
        reasons.add(
            Reason.of(
                least ? "study.cannot-reach" : "study.cannot-fall-to",
                "figure",
                target.figure(),
                "wanted",
                bound,
                "best",
                target.best(),
                "unit",
                target.unit().equals("1") ? "" : " " + target.unit()));
      }
    }
    if (reasons.isEmpty()) {
      reasons.add(Reason.of("study.cannot-together"));
    }
    return List.copyOf(reasons);
  }
}
