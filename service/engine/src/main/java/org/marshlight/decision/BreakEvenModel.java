package org.marshlight.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoublePredicate;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.WireName;
import org.marshlight.decision.BreakEvenRequest.Lever;
import org.marshlight.decision.BreakEvenStudy.Change;
import org.marshlight.decision.BreakEvenStudy.Outcome;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/**
 * Looks for the smallest single change that turns a verdict to yes: each lever is tried at steps
 * away from where it stands, and the nearest crossing is solved by a root finder on the number that
 * decides.
 */
public final class BreakEvenModel {

  /** Steps to each side of where a quantity stands. */
  private static final int STEPS = 6;

  /** Share of a quantity to which it is solved. */
  private static final double TOLERANCE = 1e-4;

  private static final int MOST_RUNS = 40;

  /** Parts that the tank alone decides. */
  private static final Set<Component> ENERGY =
      Set.of(
          Component.GAS_CAPTURE, Component.GLASS, Component.NIGHT_INSULATION, Component.CO_FEEDING);

  private final BreakEvenRequest request;
  private final PreparedSite site;
  private final CoefficientSet set;
  private final TankYears tanks = new TankYears();

  private BreakEvenModel(BreakEvenRequest request) {
    this.request = request;
    this.set = LoopModel.coefficients(request.plan());
    this.site = PreparedSite.of(request.plan(), set);
  }

  /**
   * Runs the study.
   *
   * @throws Faults if the plan is not legal; pointers start at the request
   */
  public static BreakEvenStudy run(BreakEvenRequest request) {
    List<Fault> faults =
        PlanCheck.faults(request.plan(), Stage.LOOP).stream()
            .map(fault -> fault.under("/plan"))
            .toList();
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new BreakEvenModel(request).study();
  }

  private BreakEvenStudy study() {
    Verdict now =
        VerdictModel.verdict(
            new Comparisons(request.plan(), site, set, tanks, Stage.LOOP),
            request.component(),
            request.bed());
    List<Lever> levers = request.levers() == null ? List.of(Lever.values()) : request.levers();
    Sizes sizes = Sizes.of(request.plan(), site.year().site().latitudeRad(), set);
    List<Change> changes = new ArrayList<>();
    for (Lever lever : levers) {
      PlanLever moved = PlanLever.of(lever, request.plan(), sizes, set);
      changes.add(moved == null ? none(lever) : new Search(moved, now).change());
    }
    return new BreakEvenStudy(now, List.copyOf(changes));
  }

  private Verdict verdict(Plan plan) {
    Stage far = ENERGY.contains(request.component()) ? Stage.DIGESTER : Stage.LOOP;
    return VerdictModel.verdict(
        new Comparisons(plan, site, set, tanks, far), request.component(), request.bed());
  }

  private static Change none(Lever lever) {
    return new Change(
        lever,
        Outcome.NO_LEVER,
        "1",
        null,
        null,
        null,
        null,
        null,
        Reason.of("decision.break-even-no-lever", "lever", WireName.of(lever)),
        0);
  }

  /** The search along one lever. */
  private final class Search {

    private final PlanLever lever;
    private final Verdict now;

    /** Verdicts by quantity; empty where the plan is not legal or lacks the part. */
    private final Map<Double, Optional<Verdict>> known = new TreeMap<>();

    private int runs;

    Search(PlanLever lever, Verdict now) {
      this.lever = lever;
      this.now = now;
      known.put(lever.now(), Optional.ofNullable(now));
    }

    Change change() {
      if (now != null && now.answer() == Worth.YES) {
        return told(
            Outcome.ALREADY,
            lever.now(),
            Reason.of("decision.break-even-already", "lever", WireName.of(lever.lever())));
      }
      double found = nearest(this::yes);
      if (!Double.isNaN(found)) {
        return told(
            Outcome.FOUND,
            found,
            Reason.of(
                "decision.break-even-found" + kind(),
                "lever",
                WireName.of(lever.lever()),
                "now",
                lever.now(),
                "needed",
                found,
                "unit",
                lever.unit()));
      }
      return failed();
    }

    private Change failed() {
      Optional<Verdict> best = best();
      if (best.isEmpty() || best.get().measure().aboveYes() < 0) {
        return told(
            Outcome.NONE,
            Double.NaN,
            Reason.of(
                "decision.break-even-none" + kind(),
                "lever",
                WireName.of(lever.lever()),
                "low",
                lever.low(),
                "high",
                lever.high(),
                "unit",
                lever.unit(),
                "missing",
                best.isEmpty() ? "all" : (Object) (-best.get().measure().aboveYes())));
      }
      List<Reason> holding = new ArrayList<>(best.get().conditions());
      holding.addAll(best.get().reasons());
      holding.removeIf(reason -> !best.get().heldBackBy().contains(reason.code()));
      double needed = reached(lever.now()) ? lever.now() : nearest(this::reached);
      return told(
          Outcome.HELD_BACK,
          needed,
          Reason.of(
              "decision.break-even-held-back" + kind(),
              "lever",
              WireName.of(lever.lever()),
              "needed",
              needed,
              "unit",
              lever.unit(),
              "because",
              holding.get(0).text()));
    }

    /** Counts have no unit in words. */
    private String kind() {
      return lever.whole() ? "-count" : "";
    }

    private Optional<Verdict> best() {
      return known.values().stream()
          .flatMap(Optional::stream)
          .max(Comparator.comparingDouble(verdict -> verdict.measure().aboveYes()));
    }

    private Change told(Outcome outcome, double needed, Reason reason) {
      return new Change(
          lever.lever(),
          outcome,
          lever.unit(),
          lever.now(),
          Double.isNaN(needed) ? null : needed,
          lever.low(),
          lever.high(),
          best().map(verdict -> verdict.measure().aboveYes()).orElse(null),
          reason,
          runs);
    }

    /** The nearest quantity that is as wanted, steps taken to both sides; NaN if none. */
    private double nearest(DoublePredicate wanted) {
      double from = lever.now();
      double lastUp = from;
      double lastDown = from;
      for (int step = 1; step <= STEPS; step++) {
        double up = towards(lever.high(), step);
        double down = towards(lever.low(), step);
        boolean yesUp = up != lastUp && wanted.test(up);
        boolean yesDown = down != lastDown && wanted.test(down);
        double solvedUp = yesUp ? solved(lastUp, up, wanted) : Double.NaN;
        double solvedDown = yesDown ? solved(lastDown, down, wanted) : Double.NaN;
        if (yesUp && (!yesDown || solvedUp - from <= from - solvedDown)) {
          return solvedUp;
        }
        if (yesDown) {
          return solvedDown;
        }
        lastUp = up;
        lastDown = down;
      }
      return Double.NaN;
    }

    /** Steps that start small and grow, the last at the bound. */
    private double towards(double bound, int step) {
      double share = (Math.scalb(1.0, step) - 1) / (Math.scalb(1.0, STEPS) - 1);
      double value = lever.now() + share * (bound - lever.now());
      return lever.whole() ? Math.rint(value) : value;
    }

    private boolean yes(double value) {
      return at(value).map(verdict -> verdict.answer() == Worth.YES).orElse(false);
    }

    private boolean reached(double value) {
      return at(value).map(verdict -> verdict.measure().aboveYes() >= 0).orElse(false);
    }

    private Optional<Verdict> at(double value) {
      return known.computeIfAbsent(
          value,
          amount -> {
            Plan plan = lever.at().apply(amount);
            if (!PlanCheck.faults(plan, Stage.LOOP).isEmpty()) {
              return Optional.empty();
            }
            runs++;
            return Optional.ofNullable(verdict(plan));
          });
    }

    /** The crossing between a quantity without and one with a yes. */
    private double solved(double without, double with, DoublePredicate wanted) {
      Verdict.Measure before = at(without).map(Verdict::measure).orElse(null);
      Verdict.Measure after = at(with).orElseThrow().measure();
      if (!lever.whole()
          && before != null
          && before.aboveYes() < 0
          && after.aboveYes() >= 0
          && before.unit().equals(after.unit())) {
        double root = root(without, with);
        if (wanted.test(root)) {
          return root;
        }
      }
      return halved(without, with, wanted);
    }

    private double root(double without, double with) {
      double low = Math.min(without, with);
      double high = Math.max(without, with);
      double found =
          new BrentSolver(TOLERANCE, TOLERANCE * Math.max(high - low, 1e-9))
              .solve(MOST_RUNS, this::aboveYes, low, high);
      double towardsYes = TOLERANCE * (with - without);
      return with > without
          ? Math.min(with, found + 2 * Math.abs(towardsYes))
          : Math.max(with, found - 2 * Math.abs(towardsYes));
    }

    private double aboveYes(double value) {
      return at(value).map(verdict -> verdict.measure().aboveYes()).orElse(-1.0);
    }

    private double halved(double without, double with, DoublePredicate wanted) {
      double no = without;
      double yes = with;
      double least = lever.whole() ? 1 : TOLERANCE * Math.abs(with - without) * 10;
      while (Math.abs(yes - no) > least && runs < MOST_RUNS) {
        double middle = lever.whole() ? Math.rint((yes + no) / 2) : (yes + no) / 2;
        if (middle == yes || middle == no) {
          break;
        }
        if (wanted.test(middle)) {
          yes = middle;
        } else {
          no = middle;
        }
      }
      return yes;
    }
  }
}
