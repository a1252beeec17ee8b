package org.marshlight.crop;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the crop package adds to the books. */
public final class Crops implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(GrowthTerms.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(PlantTraits.class, CropCoefficients.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("plants");
  }
}
