package org.marshlight;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;
import org.marshlight.safety.CautionRules;
import org.marshlight.study.PreparedStudy;
import org.marshlight.study.Studied;
import org.marshlight.study.Workbench;

/**
 * A study that is legal and fits, with the estimate of the plan as it is.
 *
 * @param <T> what it gives
 */
public final class OpenStudy<T extends Record> {

  private final Answer<PlanEstimate> base;
  private final PreparedStudy<T> prepared;

  OpenStudy(Answer<PlanEstimate> base, PreparedStudy<T> prepared) {
    this.base = base;
    this.prepared = prepared;
  }

  /** What the study takes, and what can hurt. */
  public StudyOpening opening() {
    return new StudyOpening(prepared.cost(), cautions(prepared.considered()));
  }

  /** Pointer to the field of the request that sets how much the study takes. */
  public String costliestField() {
    return prepared.costliestField();
  }

  /**
   * Runs the study.
   *
   * @param bench where its runs are done
   * @throws org.marshlight.study.StudyStopped if nobody waits for the study any more
   */
  public StudyAnswer<T> run(Workbench bench) {
    Studied<T> studied = prepared.run(bench);
    List<Assumption> assumptions = new ArrayList<>(studied.assumptions());
    assumptions.addAll(base.assumptions());
    List<Notice> notices = new ArrayList<>(studied.notices());
    notices.addAll(base.notices());
    return new StudyAnswer<>(
        studied.study(), cautions(studied.considered()), assumptions, notices, base.meta());
  }

  /** The cautions of the plan as it is, and those that only other plans of the study raise. */
  private List<Caution> cautions(List<Studied.Considered> considered) {
    List<List<Caution>> raised = new ArrayList<>();
    raised.add(base.cautions());
    considered.forEach(other -> raised.add(CautionRules.of(other.plan(), other.estimate())));
    return CautionBook.standard().joined(raised);
  }
}
