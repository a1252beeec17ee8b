package org.marshlight;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.Decision;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.TankComparisons;
import org.marshlight.decision.VerdictModel;
import org.marshlight.digester.TankYears;
import org.marshlight.ethanol.StillTarget;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.NegligibleNumbers;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;
import org.marshlight.loop.StageWorking;
import org.marshlight.safety.CautionRules;

/** The engine's one entry. */
public final class Marshlight {

  private Marshlight() {}

  /**
   * What a plan gives.
   *
   * @param request the plan and what is asked of it
   * @throws Faults if the plan is not legal, with every fault
   */
  public static Answer<PlanEstimate> estimate(Request request) {
    NegligibleNumbers.Counted<Plan> counted = NegligibleNumbers.of(request.plan());
    Plan plan = counted.record();
    refuse(PlanCheck.faults(plan, request.stage()));
    CoefficientSet set = LoopModel.coefficients(plan);
    PreparedSite site = PreparedSite.of(plan, set);
    TankYears tanks = new TankYears();
    LoopRun run = LoopModel.run(plan, request.stage(), site, set, tanks);
    refuse(unreachable(run));
    List<StageWorking> working = request.working() ? run.working().get() : null;
    List<Notice> notices = new ArrayList<>(counted.notices());
    notices.addAll(run.allNotices());
    notices.addAll(TankComparisons.of(plan, request.stage(), run, site, set));
    List<Assumption> assumptions = new ArrayList<>(run.assumptions());
    PlanEstimate estimate;
    if (request.stage() == Stage.LOOP) {
      Decision decision = VerdictModel.decide(plan, run, site, set, tanks);
      estimate = PlanEstimate.whole(run, decision, working);
      assumptions.addAll(decision.assumptions());
      notices.addAll(decision.notices());
    } else {
      estimate = PlanEstimate.of(request.stage(), run, working);
    }
    return new Answer<>(
        estimate,
        CautionRules.of(plan, estimate),
        List.copyOf(assumptions),
        notices,
        new Meta(Meta.VERSION, request.planSha256(), run.passes()));
  }

  private static void refuse(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
  }

  /** A strength asked of the still that its plates and reflux cannot reach. */
  private static List<Fault> unreachable(LoopRun run) {
    return run.ethanol() == null
        ? List.of()
        : StillTarget.faults(run.still(), run.ethanol().estimate());
  }

  /**
   * A plan and what is asked of it.
   *
   * @param plan the plan
   * @param stage the stage asked for
   * @param working whether the steps of each stage are wanted
   * @param planSha256 hash of the document the plan was read from; null if there was none
   */
  public record Request(Plan plan, Stage stage, boolean working, String planSha256) {}
}
