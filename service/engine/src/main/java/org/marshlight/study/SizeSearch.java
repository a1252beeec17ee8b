package org.marshlight.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.marshlight.contract.Faults;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.PlanField;
import org.marshlight.loop.Stage;

/**
 * Looks for the smallest value of one number that meets every goal: over equal steps from the least
 * value up, then by halving within the step before the first value that does. A gap narrower than a
 * step in which the goals are met, below one in which they are not, is not seen.
 */
final class SizeSearch {

  private final BaseRun base;
  private final PlanField field;
  private final double low;
  private final double high;
  private final int steps;
  private final int halvings;
  private final List<Goal> goals;

  SizeSearch(
      BaseRun base, PlanField field, Freed freed, int steps, int halvings, List<Goal> goals) {
    this.base = base;
    this.field = field;
    this.low = freed.low();
    this.high = freed.high();
    this.steps = field.whole() ? (int) Math.min(steps, high - low) : steps;
    this.halvings = field.whole() ? 0 : halvings;
    this.goals = goals;
  }

  /** Runs that the search takes at the most. */
  int runs() {
    return steps + 1 + halvings;
  }

  /** Values over which the search goes first. */
  int scanned() {
    return steps + 1;
  }

  /** Runs the plan at one of these values. */
  Trial scan(Plan plan, int step) {
    double value = low + (high - low) * step / steps;
    return trial(plan, field.whole() ? Math.rint(value) : value);
  }

  /**
   * The trials of a search, given those over the equal steps.
   *
   * @param plan the plan
   * @param scan trials over the steps, in order
   */
  Found search(Plan plan, List<Trial> scan) {
    List<Trial> trials = new ArrayList<>(scan);
    int first = 0;
    while (first < scan.size() && !scan.get(first).met()) {
      first++;
    }
    if (first == scan.size()) {
      return new Found(null, List.copyOf(trials));
    }
    Trial best = scan.get(first);
    if (first > 0) {
      double below = scan.get(first - 1).value();
      for (int i = 0; i < halvings; i++) {
        Trial middle = trial(plan, (below + best.value()) / 2);
        trials.add(middle);
        if (middle.met()) {
          best = middle;
        } else {
          below = middle.value();
        }
      }
    }
    return new Found(best, List.copyOf(trials));
  }

  private Trial trial(Plan plan, double value) {
    Plan changed = field.with(plan, value);
    double[] values = new double[goals.size()];
    Arrays.fill(values, Double.NaN);
    if (!PlanCheck.faults(changed, Stage.LOOP).isEmpty()) {
      return new Trial(changed, value, values, Double.POSITIVE_INFINITY);
    }
    try {
      Outcome outcome = base.run(changed);
      double worst = 0;
      for (int i = 0; i < values.length; i++) {
        values[i] = goals.get(i).figure().value(outcome);
        worst = Math.max(worst, goals.get(i).shortfall(outcome));
      }
      return new Trial(changed, value, values, worst);
    } catch (Faults unanswered) {
      return new Trial(changed, value, values, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * One plan tried.
   *
   * @param plan the plan
   * @param value value of the number searched
   * @param values figure of each goal; NaN where there is none
   * @param shortfall the greatest shortfall of all goals; nought if all are met
   */
  record Trial(Plan plan, double value, double[] values, double shortfall) {

    boolean met() {
      return shortfall <= 0;
    }
  }

  /**
   * What a search came to.
   *
   * @param smallest the smallest value that meets every goal; null if none does
   * @param trials all that was tried
   */
  record Found(Trial smallest, List<Trial> trials) {}
}
