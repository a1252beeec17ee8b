package org.marshlight;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.RecordCheck;
import org.marshlight.loop.Stage;
import org.marshlight.study.StudyRequest;

/** The engine's entry for studies. */
public final class Studies {

  private static final String PLAN = "/plan";

  private Studies() {}

  /**
   * A study that can be run.
   *
   * @param request the plan and what is asked about it
   * @param planSha256 hash of the document the plan was read from; null if there was none
   * @throws Faults if the request is not legal or takes too much, with every fault
   */
  public static <T extends Record> OpenStudy<T> open(StudyRequest<T> request, String planSha256) {
    return new OpenStudy<>(base(request, planSha256), request.prepare());
  }

  /** The estimate of the plan as it is. */
  private static Answer<PlanEstimate> base(StudyRequest<?> request, String planSha256) {
    Set<Fault> faults = new LinkedHashSet<>(RecordCheck.faults((Record) request));
    if (request.plan() != null) {
      PlanCheck.faults(request.plan(), Stage.LOOP).forEach(fault -> faults.add(fault.under(PLAN)));
    }
    if (!faults.isEmpty()) {
      throw new Faults(List.copyOf(faults));
    }
    try {
      return Marshlight.estimate(
          new Marshlight.Request(request.plan(), Stage.LOOP, false, planSha256));
    } catch (Faults unanswerable) {
      throw new Faults(unanswerable.list().stream().map(fault -> fault.under(PLAN)).toList());
    }
  }
}
