package org.marshlight;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.Stage;
import org.marshlight.safety.CautionBook;

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
    List<Fault> faults = PlanCheck.faults(request.plan());
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    return new Answer<>(
        new PlanEstimate(null, List.of(), List.of(), List.of(), List.of(), null),
        CautionBook.standard().general(),
        List.of(),
        List.of(),
        new Meta(Meta.VERSION, request.planSha256(), 1));
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
