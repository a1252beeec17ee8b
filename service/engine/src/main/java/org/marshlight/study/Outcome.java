package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.Decision;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.VerdictModel;
import org.marshlight.digester.TankYears;
import org.marshlight.ethanol.StillTarget;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/** One run of a plan's whole chain. What goes beyond the stages is only worked when asked for. */
final class Outcome {

  private final Plan plan;
  private final CoefficientSet set;
  private final PreparedSite site;
  private final LoopRun run;
  private final TankYears tanks;
  private Decision decision;
  private PlanEstimate whole;
  private List<Verdict> verdicts;

  private Outcome(Plan plan, CoefficientSet set, PreparedSite site, LoopRun run, TankYears tanks) {
    this.plan = plan;
    this.set = set;
    this.site = site;
    this.run = run;
    this.tanks = tanks;
  }

  /**
   * Runs a legal plan.
   *
   * @throws Faults if it has no answer with these coefficients
   */
  static Outcome of(Plan plan, CoefficientSet set, PreparedSite site) {
    return of(plan, set, site, Stage.LOOP);
  }

  /**
   * Runs a legal plan as far as a stage; short of the whole chain there are only stages.
   *
   * @throws Faults if it has no answer with these coefficients
   */
  static Outcome of(Plan plan, CoefficientSet set, PreparedSite site, Stage stage) {
    TankYears tanks = new TankYears();
    LoopRun run = LoopModel.run(plan, stage, site, set, tanks);
    if (run.ethanol() != null) {
      List<Fault> unreachable = StillTarget.faults(run.still(), run.ethanol().estimate());
      if (!unreachable.isEmpty()) {
        throw new Faults(unreachable);
      }
    }
    return new Outcome(plan, set, site, run, tanks);
  }

  LoopRun run() {
    return run;
  }

  /**
   * The part of the estimate under a name of its root.
   *
   * @return a record or a list; null if the plan does not have it
   */
  Object part(String name) {
    return switch (name) {
      case "digester" -> run.digester() == null ? null : run.digester().estimate();
      case "wetland" -> run.wetland() == null ? null : run.wetland().estimate();
      case "crop" -> run.crop() == null ? null : run.crop().estimate();
      case "ethanol" -> run.ethanol() == null ? null : run.ethanol().estimate();
      case "compost" -> run.compost() == null ? null : run.compost().estimate();
      case "verdicts" -> verdicts();
      default ->
          RecordShape.of(PlanEstimate.class)
              .field(name)
              .map(field -> field.of(estimate()))
              .orElse(null);
    };
  }

  /** All figures with verdicts. */
  PlanEstimate estimate() {
    if (whole == null) {
      whole = PlanEstimate.whole(run, decision(), null);
    }
    return whole;
  }

  /** What is decided of the plan. */
  Decision decision() {
    if (decision == null) {
      decision = VerdictModel.decide(plan, run, site, set, tanks);
    }
    return decision;
  }

  /** The verdicts, without what else is decided of the plan. */
  List<Verdict> verdicts() {
    if (verdicts == null) {
      verdicts =
          decision == null
              ? VerdictModel.verdicts(plan, run, site, set, tanks)
              : decision.verdicts();
    }
    return verdicts;
  }
}
