package org.marshlight.study;

import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/**
 * Sites of runs one after the other; a run takes up the weather of the plan as it is, or of the run
 * before it, where nothing that matters to it has changed. Serves one thread.
 */
final class Sites {

  private final BaseRun base;
  private Plan lastPlan;
  private CoefficientSet lastSet;
  private PreparedSite last;

  Sites(BaseRun base) {
    this.base = base;
  }

  /** Runs a changed plan as far as a stage. */
  Outcome run(Plan plan, CoefficientSet set, Stage stage) {
    return Outcome.of(plan, set, site(plan, set), stage);
  }

  /** The site of a changed plan. */
  PreparedSite site(Plan plan, CoefficientSet set) {
    if (BaseRun.sameWeather(base.plan(), base.set(), plan, set)) {
      return base.site();
    }
    if (last == null || !BaseRun.sameWeather(lastPlan, lastSet, plan, set)) {
      last = PreparedSite.of(plan, set, last == null ? base.site() : last);
      lastPlan = plan;
      lastSet = set;
    }
    return last;
  }
}
