package org.marshlight.economy;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the economy package adds to the books. */
public final class Economy implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(Discounting.class, Investment.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(FinanceCoefficients.class);
  }
}
