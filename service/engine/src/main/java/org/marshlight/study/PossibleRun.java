package org.marshlight.study;

import org.marshlight.contract.Faults;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.Stage;

/** Runs numbers that were drawn one by one and need not be possible together. */
final class PossibleRun {

  private PossibleRun() {}

  /**
   * A run of a changed plan as far as a stage.
   *
   * @return the run; null if the plan has no answer with these coefficients
   */
  static Outcome of(Sites sites, Plan plan, CoefficientSet set, Stage stage) {
    if (!PlanCheck.faults(plan, set).isEmpty()) {
      return null;
    }
    try {
      return sites.run(plan, set, stage);
    } catch (Faults unsettled) {
      return null;
    }
  }
}
