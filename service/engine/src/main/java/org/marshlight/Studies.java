package org.marshlight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.RecordCheck;
import org.marshlight.loop.Stage;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;
import org.marshlight.safety.CautionRules;
import org.marshlight.study.PreparedStudy;
import org.marshlight.study.Studied;
import org.marshlight.study.StudyRequest;
import org.marshlight.study.Workbench;

/** The engine's entry for studies. */
public final class Studies {

  private static final String PLAN = "/plan";

  private Studies() {}

  /**
   * What a study gives.
   *
   * @param request the plan and what is asked about it
   * @param planSha256 hash of the document the plan was read from; null if there was none
   * @param bench where its runs are done
   * @param opened hears, before the first run, what the study takes and what can hurt
   * @throws Faults if the request is not legal or takes too much, with every fault
   * @throws org.marshlight.study.StudyStopped if nobody waits for the study any more
   */
  public static <T extends Record> StudyAnswer<T> answer(
      StudyRequest<T> request, String planSha256, Workbench bench, Consumer<StudyOpening> opened) {
    Answer<PlanEstimate> base = base(request, planSha256);
    PreparedStudy<T> prepared = request.prepare();
    opened.accept(new StudyOpening(prepared.cost(), base.cautions()));
    Studied<T> studied = prepared.run(bench);
    List<Assumption> assumptions = new ArrayList<>(studied.assumptions());
    assumptions.addAll(base.assumptions());
    List<Notice> notices = new ArrayList<>(studied.notices());
    notices.addAll(base.notices());
    return new StudyAnswer<>(
        studied.study(), cautions(base, studied), assumptions, notices, base.meta());
  }

  /**
   * What a study would take, without running it.
   *
   * @throws Faults if the request is not legal or takes too much, with every fault
   */
  public static StudyOpening opening(StudyRequest<?> request) {
    Answer<PlanEstimate> base = base(request, null);
    return new StudyOpening(request.prepare().cost(), base.cautions());
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

  private static List<Caution> cautions(Answer<PlanEstimate> base, Studied<?> studied) {
    Set<Caution> raised = new LinkedHashSet<>(base.cautions());
    for (Studied.Considered considered : studied.considered()) {
      raised.addAll(CautionRules.of(considered.plan(), considered.estimate()));
    }
    return CautionBook.standard().all().stream().filter(raised::contains).toList();
  }
}
