package org.marshlight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.NegligibleNumbers;
import org.marshlight.loop.Plan;
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
    NegligibleNumbers.Counted<? extends Record> counted = NegligibleNumbers.of((Record) request);
    @SuppressWarnings("unchecked")
    StudyRequest<T> withZeros = (StudyRequest<T>) counted.record();
    Answer<PlanEstimate> base = noted(base(withZeros, planSha256), counted.notices());
    return new OpenStudy<>(base, withZeros.prepare());
  }

  /** The same answer with more notices, which come first. */
  private static Answer<PlanEstimate> noted(Answer<PlanEstimate> answer, List<Notice> more) {
    List<Notice> notices = new ArrayList<>(more);
    notices.addAll(answer.notices());
    return new Answer<>(
        answer.estimate(), answer.cautions(), answer.assumptions(), notices, answer.meta());
  }

  /**
   * Every fault of the settings and of the plan of a study, before it is prepared.
   *
   * @param request the request, or what could be read of it
   * @param plan its plan; null if there is none
   * @param unreadable faults of form, by pointers into the request; empty if all was read
   */
  public static List<Fault> faults(Record request, Plan plan, List<Fault> unreadable) {
    Set<Fault> faults = new LinkedHashSet<>(RecordCheck.faults(request));
    if (plan != null) {
      List<Fault> ofPlan =
          unreadable.stream()
              .filter(fault -> fault.pointer().startsWith(PLAN + "/"))
              .map(fault -> fault.below(PLAN))
              .toList();
      PlanCheck.faults(plan, Stage.LOOP, ofPlan).stream()
          .filter(fault -> !ofPlan.contains(fault))
          .forEach(fault -> faults.add(fault.under(PLAN)));
    }
    return Faults.joined(unreadable, List.copyOf(faults));
  }

  /** The estimate of the plan as it is. */
  private static Answer<PlanEstimate> base(StudyRequest<?> request, String planSha256) {
    List<Fault> faults = faults((Record) request, request.plan(), List.of());
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    try {
      return Marshlight.estimate(
          new Marshlight.Request(request.plan(), Stage.LOOP, false, planSha256));
    } catch (Faults unanswerable) {
      throw new Faults(unanswerable.list().stream().map(fault -> fault.under(PLAN)).toList());
    }
  }
}
