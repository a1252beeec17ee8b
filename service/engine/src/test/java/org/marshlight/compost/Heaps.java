package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;

/** Heaps and sites for the tests of the compost. */
final class Heaps {

  static final CoefficientSet CENTRAL = CoefficientBook.standard().central();

  /** An invented hill climate with cold winters. */
  static final CompostSite HILLS =
      new CompostSite(List.of(-2.5, -0.4, 4.2, 9.0, 13.8, 17.4, 19.3, 18.8, 14.4, 9.1, 3.2, -1.4));

  static final CompostSite WARM = new CompostSite(Collections.nCopies(12, 24.0));

  private Heaps() {}

  static IngredientDesign of(String ingredient, double freshKg) {
    return new IngredientDesign(ingredient, freshKg, null);
  }

  static CompostDesign design(CompostMethod method, IngredientDesign... ingredients) {
    return new CompostDesign(Arrays.asList(ingredients), method, 200.0);
  }

  static Material loop(String from, String ingredient, double freshKg, boolean humanOrigin) {
    return Material.ofLoop(
        from,
        ingredient,
        CENTRAL.bind(Ingredient.class, ingredient).matter(freshKg),
        humanOrigin,
        CENTRAL);
  }

  static CompostOutcome run(CompostDesign design, Material... fromLoop) {
    return CompostModel.run(design, Arrays.asList(fromLoop), HILLS, CENTRAL);
  }

  /** Temperature and time at 55 Cel are told with ranges, and what is wanting by the lower end. */
  static void assertRangesHoldTheirMiddle(CompostEstimate.HygieneFigures hygiene) {
    assertThat(hygiene.peakTemperatureC())
        .isBetween(hygiene.peakTemperatureLowC(), hygiene.peakTemperatureHighC());
    assertThat(hygiene.above55Days())
        .isBetween(hygiene.above55LowDays(), hygiene.above55HighDays());
    assertThat(hygiene.heatWantingDays())
        .isCloseTo(Math.max(0, 15 - hygiene.above55LowDays()), within(1e-9));
  }
}
