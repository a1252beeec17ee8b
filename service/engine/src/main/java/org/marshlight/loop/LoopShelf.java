package org.marshlight.loop;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the loop package adds to the books: limits of legal plans. */
public final class LoopShelf implements EvidenceShelf {

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(PlanLimits.class, EffluentCoefficients.class);
  }
}
