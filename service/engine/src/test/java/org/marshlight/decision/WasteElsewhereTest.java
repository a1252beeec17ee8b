package org.marshlight.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marshlight.contract.RecordShape.changed;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.FeedDesign;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanBuilder;

/** A waste that a changed plan takes up less of goes elsewhere by the difference, and only once. */
class WasteElsewhereTest {

  private static final BaselineDesign NOTHING_STATED =
      new BaselineDesign(null, null, null, null, null);

  private static final FeedDesign TWO = FeedDesign.of("kitchen-scraps", 2);
  private static final FeedDesign THREE = FeedDesign.of("kitchen-scraps", 3);

  private static double elsewhereKg(List<FeedDesign> whole, List<FeedDesign> fed) {
    Plan base = PlanBuilder.homestead().build();
    Plan plan = changed(base, "feeds", whole);
    CoefficientSet set = LoopModel.coefficients(plan);
    return WasteElsewhere.between(plan, changed(base, "feeds", fed), NOTHING_STATED, set).stream()
        .mapToDouble(waste -> waste.annual().freshKg())
        .sum();
  }

  @Test
  void whatIsFedStillIsNotElsewhere() {
    assertThat(elsewhereKg(List.of(TWO, THREE), List.of(TWO, THREE))).isZero();
    assertThat(elsewhereKg(List.of(TWO), List.of(THREE))).as("more is fed").isZero();
  }

  @Test
  void ofTwoEntriesOfTheSameWasteTheOneThatIsLeftOutIsElsewhere() {
    assertThat(elsewhereKg(List.of(TWO, TWO), List.of(TWO))).isCloseTo(2 * 365, within(1e-9));
    assertThat(elsewhereKg(List.of(TWO, THREE), List.of(TWO))).isCloseTo(3 * 365, within(1e-9));
    assertThat(elsewhereKg(List.of(TWO, THREE), List.of())).isCloseTo(5 * 365, within(1e-9));
  }
}
