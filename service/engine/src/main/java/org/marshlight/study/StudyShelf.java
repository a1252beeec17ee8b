package org.marshlight.study;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the study package adds to the books: the models' own errors, and usual sizes of studies. */
public final class StudyShelf implements EvidenceShelf {

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(Discrepancies.class);
  }
}
