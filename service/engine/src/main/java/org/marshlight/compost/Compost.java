package org.marshlight.compost;

import java.util.List;
import org.marshlight.evidence.EvidenceShelf;

/** What the compost package adds to the books. */
public final class Compost implements EvidenceShelf {

  @Override
  public List<Class<?>> formulas() {
    return List.of(
        Mixing.class, Decay.class, HeapHeat.class, Sanitation.class, NutrientReturn.class);
  }

  @Override
  public List<Class<? extends Record>> coefficientRecords() {
    return List.of(
        DecayCoefficients.class,
        HeatCoefficients.class,
        MixCoefficients.class,
        ReturnCoefficients.class,
        HygieneRules.class,
        Ingredient.class,
        Method.class);
  }

  @Override
  public List<String> catalogues() {
    return List.of("ingredients", "compost-methods");
  }
}
