package org.marshlight.decision;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the decision package adds to the books: thresholds of the verdicts. */
public final class DecisionShelf implements EvidenceShelf {

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(DecisionCoefficients.class);
  }
}
