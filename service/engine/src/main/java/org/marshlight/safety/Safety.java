package org.marshlight.safety;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the safety package adds to the books: formulas, limits and sources of its figures. */
public final class Safety implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(RoomGas.class, Exposure.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(SafetyCoefficients.class);
  }
}
