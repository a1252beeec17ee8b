package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Plan;

/**
 * What a study came to.
 *
 * @param study its figures
 * @param assumptions settings that were filled
 * @param notices remarks
 * @param considered other plans whose figures the study tells, so that their cautions are told too
 */
public record Studied<T extends Record>(
    T study, List<Assumption> assumptions, List<Notice> notices, List<Considered> considered) {

  public Studied {
    assumptions = List.copyOf(assumptions);
    notices = List.copyOf(notices);
    considered = List.copyOf(considered);
  }

  /**
   * A plan beside the one of the request.
   *
   * @param plan the plan
   * @param estimate its figures
   */
  public record Considered(Plan plan, PlanEstimate estimate) {}
}
