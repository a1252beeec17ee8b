package org.marshlight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
    return new StudyOpening(prepared.cost(), base.cautions());
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
    return new StudyAnswer<>(studied.study(), cautions(studied), assumptions, notices, base.meta());
  }

  private List<Caution> cautions(Studied<T> studied) {
    Set<Caution> raised = new LinkedHashSet<>(base.cautions());
    for (Studied.Considered considered : studied.considered()) {
      raised.addAll(CautionRules.of(considered.plan(), considered.estimate()));
    }
    return CautionBook.standard().all().stream().filter(raised::contains).toList();
  }
}
