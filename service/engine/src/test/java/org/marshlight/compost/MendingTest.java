package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CatalogueItem;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientSet;

class MendingTest {

  @Test
  void theSolvedAdditionBringsEveryIngredientIntoTheIdealBand() {
    for (CatalogueItem item : Catalogues.standard().items("ingredients")) {
      CompostEstimate.MendingFigures mending =
          Heaps.run(Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of(item.id(), 100)))
              .estimate()
              .mending();
      if (mending.needed()) {
        assertThat(mending.possible()).as(item.id()).isTrue();
        assertThat(mending.additions()).hasSizeBetween(1, 2);
        assertThat(mending.moistureFraction()).isBetween(0.45 - 1e-6, 0.6 + 1e-6);
        assertThat(mending.carbonToNitrogen()).isBetween(25 - 1e-6, 35 + 1e-6);
      }
    }
  }

  @Test
  void theAdditionMadeTheMixIsFoundGood() {
    CompostEstimate.MendingFigures mending =
        Heaps.run(Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("kitchen-scraps", 500)))
            .estimate()
            .mending();
    IngredientDesign[] ingredients = new IngredientDesign[mending.additions().size() + 1];
    ingredients[0] = Heaps.of("kitchen-scraps", 500);
    for (int i = 1; i < ingredients.length; i++) {
      CompostEstimate.AdditionFigures addition = mending.additions().get(i - 1);
      ingredients[i] = Heaps.of(addition.ingredient(), addition.freshKg());
    }
    CompostEstimate mended =
        Heaps.run(Heaps.design(CompostMethod.TURNED_HEAP, ingredients)).estimate();
    assertThat(mended.mending().needed()).isFalse();
    assertThat(mended.mix().drainedWaterKg()).isZero();
  }

  @Test
  void aGoodMixNeedsNothing() {
    CompostEstimate.MendingFigures mending =
        Heaps.run(
                Heaps.design(
                    CompostMethod.TURNED_HEAP,
                    Heaps.of("straw", 150),
                    Heaps.of("grass-clippings", 330)))
            .estimate()
            .mending();
    assertThat(mending.needed()).isFalse();
    assertThat(mending.additions()).isEmpty();
  }

  /** Where the goal does not lie between what can be added, the answer is never negative. */
  @Test
  void aGoalBeyondAllIngredientsIsImpossible() {
    CoefficientSet strict =
        Heaps.CENTRAL.with(
            Map.of(
                "compost.ratio-most", 100.0,
                "compost.ratio-least", 30.0,
                "compost.moisture-least", 0.2,
                "compost.moisture-most", 0.45));
    CoefficientSet wetEverywhere = strict;
    for (String id : Catalogues.standard().ids("ingredients")) {
      wetEverywhere = wetEverywhere.with(Map.of("ingredients." + id + ".moisture", 0.7));
    }
    CompostOutcome outcome =
        CompostModel.run(
            Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("kitchen-scraps", 100)),
            List.of(),
            Heaps.HILLS,
            wetEverywhere);
    assertThat(outcome.estimate().mending().needed()).isTrue();
    assertThat(outcome.estimate().mending().possible()).isFalse();
    assertThat(outcome.notices()).extracting(Notice::code).contains("compost.cannot-be-mended");
  }
}
