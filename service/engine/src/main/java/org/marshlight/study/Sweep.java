package org.marshlight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Verdict;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.PlanField;
import org.marshlight.loop.Stage;

/** Runs a plan over a line or a grid of values. */
final class Sweep implements PreparedStudy<SweepStudy> {

  private static final int MOST_POINTS = 500;

  private final BaseRun base;
  private final Figures figures;
  private final List<PlanField> fields;
  private final List<double[]> axes;
  private final List<Plan> plans;
  private final StudyCost cost;

  private Sweep(
      BaseRun base,
      Figures figures,
      List<PlanField> fields,
      List<double[]> axes,
      List<Plan> plans,
      StudyCost cost) {
    this.base = base;
    this.figures = figures;
    this.fields = fields;
    this.axes = axes;
    this.plans = plans;
    this.cost = cost;
  }

  static Sweep of(SweepRequest request) {
    List<Fault> faults = new ArrayList<>();
    List<PlanField> fields = new ArrayList<>();
    List<double[]> axes = new ArrayList<>();
    int points = 1;
    for (int i = 0; i < request.vary().size(); i++) {
      String at = "/vary/" + i;
      PlanField field =
          PlanField.find(request.plan(), request.vary().get(i).pointer(), at + "/pointer", faults);
      double[] values = SweptValues.of(request.vary().get(i), field, at, faults);
      fields.add(field);
      axes.add(values);
      points *= values.length;
    }
    if (points > MOST_POINTS) {
      faults.add(
          Fault.of(
              "study.too-many-points",
              "/vary",
              points,
              "at most " + MOST_POINTS + " points in all",
              "points",
              points,
              "most",
              MOST_POINTS));
    }
    refuse(faults);
    List<Plan> plans = plans(request, fields, axes, faults);
    refuse(faults);
    BaseRun base = BaseRun.of(request.plan());
    Figures figures =
        request.outputs() == null
            ? Figures.annual(base.outcome())
            : Figures.of(request.outputs(), base.outcome(), "/outputs");
    StudyCost cost = StudyCost.of((long) points * figures.runsEach());
    return new Sweep(base, figures, fields, axes, plans, cost);
  }

  private static void refuse(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
  }

  /** The plan of each point; a point that makes an illegal plan is a fault of its value. */
  private static List<Plan> plans(
      SweepRequest request, List<PlanField> fields, List<double[]> axes, List<Fault> faults) {
    List<Plan> plans = new ArrayList<>();
    for (int first = 0; first < axes.get(0).length; first++) {
      Plan plan = fields.get(0).with(request.plan(), axes.get(0)[first]);
      if (axes.size() == 1) {
        plans.add(legal(plan, "/vary/0/values/" + first, faults));
        continue;
      }
      for (int second = 0; second < axes.get(1).length; second++) {
        Plan both = fields.get(1).with(plan, axes.get(1)[second]);
        plans.add(legal(both, "/vary/1/values/" + second, faults));
      }
    }
    return plans;
  }

  private static Plan legal(Plan plan, String at, List<Fault> faults) {
    for (Fault fault : PlanCheck.faults(plan, Stage.LOOP)) {
      faults.add(
          Fault.of(
              "study.illegal-point",
              at,
              fault.rejected(),
              fault.allowed(),
              "field",
              fault.pointer(),
              "detail",
              fault.detail()));
    }
    return plan;
  }

  @Override
  public String costliestField() {
    return "/vary";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  @Override
  public Studied<SweepStudy> run(Workbench bench) {
    List<Point> points = bench.each(plans.size(), i -> point(plans.get(i)));
    List<SweepStudy.Axis> swept = new ArrayList<>();
    for (int i = 0; i < axes.size(); i++) {
      PlanField field = fields.get(i);
      swept.add(
          new SweepStudy.Axis(
              field.pointer(), field.unit(), field.meaning(), Months.list(axes.get(i))));
    }
    List<SweepStudy.Curve> curves = new ArrayList<>();
    for (int f = 0; f < figures.list().size(); f++) {
      Figure figure = figures.list().get(f);
      double[] values = new double[points.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = points.get(i).values()[f];
      }
      curves.add(
          new SweepStudy.Curve(
              figure.name(),
              figure.pointer(),
              figure.unit(),
              figure.meaning(),
              Months.list(values)));
    }
    SweepStudy study =
        new SweepStudy(
            cost, points.size(), List.copyOf(swept), List.copyOf(curves), answers(points));
    return new Studied<>(study, List.of(), notices(points), considered(points));
  }

  private Point point(Plan plan) {
    try {
      Outcome outcome = base.run(plan);
      return new Point(
          figures.values(outcome),
          figures.verdicts() ? Judged.answers(outcome.verdicts()) : Map.of(),
          new Studied.Considered(plan, PlanEstimate.undecided(outcome.run())));
    } catch (Faults unanswered) {
      double[] none = new double[figures.list().size()];
      Arrays.fill(none, Double.NaN);
      return new Point(none, Map.of(), null);
    }
  }

  private List<SweepStudy.Answers> answers(List<Point> points) {
    Set<Judged> all = new LinkedHashSet<>();
    points.forEach(point -> all.addAll(point.verdicts().keySet()));
    List<SweepStudy.Answers> answers = new ArrayList<>();
    for (Judged judged : all) {
      List<Verdict.Worth> each = new ArrayList<>();
      points.forEach(point -> each.add(point.verdicts().get(judged)));
      answers.add(
          new SweepStudy.Answers(
              judged.component(), judged.bed(), Collections.unmodifiableList(each)));
    }
    return List.copyOf(answers);
  }

  private static List<Notice> notices(List<Point> points) {
    long unanswered = points.stream().filter(point -> !point.answered()).count();
    return unanswered == 0
        ? List.of()
        : List.of(Notice.of("study.points-without-answer", "points", unanswered));
  }

  private static List<Studied.Considered> considered(List<Point> points) {
    return points.stream().map(Point::considered).filter(Objects::nonNull).toList();
  }

  /**
   * What one point came to.
   *
   * @param considered its plan with its figures; null if it has no answer
   */
  private record Point(
      double[] values, Map<Judged, Verdict.Worth> verdicts, Studied.Considered considered) {

    boolean answered() {
      return considered != null;
    }
  }
}
