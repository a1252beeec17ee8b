package org.marshlight.decision;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoublePredicate;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.marshlight.contract.Faults;
import org.marshlight.contract.WireName;
import org.marshlight.decision.BreakEvenStudy.Change;
import org.marshlight.decision.BreakEvenStudy.Outcome;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientSet;
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

  /** Verdicts that a search along one lever takes at the most. */
  public static final int MOST_VERDICTS = 2 * (STEPS + MOST_RUNS);

  /** Parts that the tank alone decides. */
  private static final Set<Component> ENERGY =
      Set.of(
          Component.GAS_CAPTURE, Component.GLASS, Component.NIGHT_INSULATION, Component.CO_FEEDING);

  private final Plan plan;
  private final PreparedSite site;
  private final CoefficientSet set;
  private final Component component;
  private final String bed;
  private final Verdict now;

  /**
   * A model of one verdict.
   *
   * @param plan a legal plan
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   * @param component the part whose verdict is to be turned
   * @param bed name of the bed, where one of several is meant; null otherwise
   */
  public BreakEvenModel(
      Plan plan, PreparedSite site, CoefficientSet set, Component component, String bed) {
    this.plan = plan;
    this.site = site;
    this.set = set;
    this.component = component;
    this.bed = bed;
    this.now =
        VerdictModel.verdict(
            new Comparisons(plan, site, set, new TankYears(), Stage.LOOP), component, bed);
  }

  /** The verdict as it stands; null where the plan does not have the part. */
  public Verdict now() {
    return now;
  }

  /** What one lever can do; may be asked from several threads. */
  public Change change(Lever lever) {
    return lever(lever)
        .map(moved -> uncharged(moved) ? costNotGiven(moved) : new Search(moved).change())
        .orElseGet(() -> none(lever));
  }

  /** Whether money decides, and the change would cost money that the plan does not give. */
  private boolean uncharged(PlanLever lever) {
    return lever.charge() == null
        && now != null
        && now.answer() != Worth.YES
        && now.difference().money() != null
        && ENERGY.contains(component);
  }

  /** The plan that a change makes; empty where it needs nothing or cannot be made. */
  public Optional<Plan> changed(Change change) {
    return change.needed() == null
        ? Optional.empty()
        : lever(change.lever()).map(moved -> moved.at().apply(change.needed()));
  }

  private Optional<PlanLever> lever(Lever lever) {
    Sizes sizes = Sizes.of(plan, site.year().site().latitudeRad(), set);
    return Optional.ofNullable(PlanLever.of(lever, plan, sizes, set));
  }

  /** The verdict on a changed plan; empty where it is not legal, has no answer or no such part. */
  private Optional<Verdict> verdict(Plan changed, double charged, TankYears tanks) {
    if (!PlanCheck.faults(changed, Stage.LOOP).isEmpty()) {
      return Optional.empty();
    }
    Stage far = ENERGY.contains(component) ? Stage.DIGESTER : Stage.LOOP;
    try {
      return Optional.ofNullable(
          VerdictModel.verdict(
              new Comparisons(changed, site, set, tanks, far, charged), component, bed));
    } catch (Faults unsettled) {
      return Optional.empty();
    }
  }

  /** The unit of the number that decides, with a blank before it; none for a ratio. */
  private String spokenUnit(Verdict verdict) {
    if (verdict.basis() == Verdict.Basis.MONEY) {
      return " " + MoneyReasons.currency(plan.money());
    }
    return switch (verdict.measure().unit()) {
      case "1" -> "";
      case EnergyParts.PER_YEAR -> " kWh a year";
      case EnergyParts.PER_M2 -> " kWh a square metre and year";
      default -> " " + verdict.measure().unit();
    };
  }

  private static Change none(Lever lever) {
    return untried(lever, Reason.of("decision.break-even-no-lever", "lever", WireName.of(lever)));
  }

  private static Change costNotGiven(PlanLever lever) {
    return untried(
        lever.lever(),
        Reason.of("decision.break-even-cost-not-given", "lever", WireName.of(lever.lever())));
  }

  private static Change untried(Lever lever, Reason reason) {
    return new Change(lever, Outcome.NO_LEVER, "1", null, null, null, null, null, reason, 0);
  }

  /** The search along one lever. */
  private final class Search {

    private final PlanLever lever;
    private final TankYears tanks = new TankYears();

    /** Verdicts by quantity; empty where the plan is not legal or lacks the part. */
    private final Map<Double, Optional<Verdict>> known = new TreeMap<>();

    private int runs;

    Search(PlanLever lever) {
      this.lever = lever;
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
                "decision.break-even-found" + kind() + uncounted(),
                "lever",
                WireName.of(lever.lever()),
                "now",
                lever.now(),
                "needed",
                found,
                "unit",
                lever.spoken()));
      }
      return failed();
    }

    private Change failed() {
      Optional<Verdict> best = best();
      if (best.isEmpty() || best.get().measure().aboveYes() < 0) {
        return told(Outcome.NONE, Double.NaN, best.map(this::tooLow).orElseGet(this::neverThere));
      }
      if (best.get().heldBackBy().isEmpty()) {
        return told(Outcome.NONE, Double.NaN, worthless());
      }
      List<Reason> holding = new ArrayList<>(best.get().conditions());
      holding.addAll(best.get().reasons());
      holding.removeIf(reason -> !best.get().heldBackBy().contains(reason.code()));
      double needed = reached(lever.now()) ? lever.now() : nearest(this::reached);
      if (lever.changesTank() && needed != lever.now()) {
        return told(Outcome.HELD_BACK, Double.NaN, turnsNothing(holding.get(0)));
      }
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
              lever.spoken(),
              "because",
              holding.get(0).text()));
    }

    private Reason tooLow(Verdict best) {
      Verdict.Measure measure = best.measure();
      return ofRange(
          "decision.break-even-none" + kind(),
          "best",
          measure.value(),
          "wanted",
          measure.yesFrom(),
          "of",
          spokenUnit(best));
    }

    /** Nobody builds another tank for a verdict that stays as it is. */
    private Reason turnsNothing(Reason holding) {
      return ofRange("decision.break-even-held-back-anyway", "because", holding.text());
    }

    private Reason worthless() {
      return ofRange("decision.break-even-worthless" + kind());
    }

    private Reason neverThere() {
      return ofRange("decision.break-even-never-there" + kind());
    }

    /** A reason that names the lever and the whole range over which it was tried. */
    private Reason ofRange(String code, Object... more) {
      List<Object> params =
          new ArrayList<>(
              List.of(
                  "lever",
                  WireName.of(lever.lever()),
                  "low",
                  lever.low(),
                  "high",
                  lever.high(),
                  "unit",
                  lever.spoken()));
      params.addAll(List.of(more));
      return Reason.of(code, params.toArray());
    }

    /** Counts have no unit in words. */
    private String kind() {
      return lever.whole() ? "-count" : "";
    }

    /** Whether the change costs money that does not count in the verdict. */
    private String uncounted() {
      boolean costs =
          lever.charge() == null || lever.lever() == Lever.RETENTION && !ENERGY.contains(component);
      return costs ? "-uncounted" : "";
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
            runs++;
            return verdict(lever.at().apply(amount), charge(amount), tanks);
          });
    }

    private double charge(double amount) {
      return lever.charge() == null ? 0 : lever.charge().applyAsDouble(amount);
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
        OptionalDouble root = root(without, with);
        if (root.isPresent() && wanted.test(root.getAsDouble())) {
          return root.getAsDouble();
        }
      }
      return halved(without, with, wanted);
    }

    /**
     * Where the number that decides is that of a yes; nothing if it jumps so that none is found.
     */
    private OptionalDouble root(double without, double with) {
      double low = Math.min(without, with);
      double high = Math.max(without, with);
      double found;
      try {
        found =
            new BrentSolver(TOLERANCE, TOLERANCE * Math.max(high - low, 1e-9))
                .solve(MOST_RUNS, this::aboveYes, low, high);
      } catch (TooManyEvaluationsException e) {
        return OptionalDouble.empty();
      }
      double beyond = 2 * TOLERANCE * Math.abs(with - without);
      return OptionalDouble.of(
          with > without ? Math.min(with, found + beyond) : Math.max(with, found - beyond));
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
