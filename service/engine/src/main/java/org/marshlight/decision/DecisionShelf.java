package org.marshlight.decision;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the decision package adds to the books: thresholds, gases, sizes, hours. */
public final class DecisionShelf implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(Warming.class, Photovoltaics.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(
        DecisionCoefficients.class,
        UseEfficiencies.class,
        WarmingCoefficients.class,
        StoveGases.class,
        AlternativeCoefficients.class,
        BuildingCoefficients.class,
        WorkCoefficients.class);
  }
}
