package org.marshlight.statistics;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the statistics package adds to the books: quantiles, points and reference problems. */
public final class Statistics implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(Quantiles.class, SobolPoints.class, ReferenceProblems.class);
  }
}
