package org.marshlight.ethanol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Faults;
import org.marshlight.evidence.FormulaBook;

class McCabeThieleTest {

  private static final double FEED = 0.03;
  private static final double BOTTOMS = 0.001;

  @Test
  void strengthAndStagesAreInverse() {
    for (double plates : new double[] {1, 3, 7.5, 20, 60}) {
      double distillate = McCabeThiele.distillate(FEED, BOTTOMS, plates, 4, 1);
      assertThat(McCabeThiele.stages(distillate, FEED, BOTTOMS, 4, 1))
          .isCloseTo(plates + 1, within(1e-6));
    }
  }

  @Test
  void platesAndRefluxNeverWeakenTheSpirit() {
    double before = 0;
    for (double plates = 1; plates <= 80; plates++) {
      double distillate = McCabeThiele.distillate(FEED, BOTTOMS, plates, 3, 1);
      assertThat(distillate).isGreaterThanOrEqualTo(before);
      before = distillate;
    }
    before = 0;
    for (double reflux = 0.05; reflux <= 100; reflux *= 1.5) {
      double distillate = McCabeThiele.distillate(FEED, BOTTOMS, 12, reflux, 1);
      assertThat(distillate).isGreaterThanOrEqualTo(before);
      before = distillate;
    }
    assertThat(before).isLessThan(EquilibriumCurve.STANDARD.azeotrope());
  }

  @Test
  void aboveTheLeastRefluxPlatesSufficeAndBelowItNoneDo() {
    double least = McCabeThiele.minimumReflux(0.7, FEED, 1);
    assertThat(McCabeThiele.stages(0.7, FEED, BOTTOMS, 1.02 * least, 1)).isFinite();
    assertThat(McCabeThiele.stages(0.7, FEED, BOTTOMS, 0.98 * least, 1)).isInfinite();
  }

  @Test
  void nearTheAzeotropeTheTangentDecidesTheLeastReflux() {
    double least = McCabeThiele.minimumReflux(0.88, 0.4, 1);
    double vapour = McCabeThiele.vapourFraction(0.4);
    double atFeed = (0.88 - vapour) / (vapour - 0.4);
    assertThat(least).isGreaterThan(1.2 * atFeed);
    assertThat(McCabeThiele.stages(0.88, 0.4, BOTTOMS, 1.02 * least, 1)).isFinite();
  }

  @Test
  void totalRefluxNeedsFewestStages() {
    double fewest = McCabeThiele.minimumStages(0.7, BOTTOMS);
    assertThat(McCabeThiele.stages(0.7, FEED, BOTTOMS, 5, 1)).isGreaterThan(fewest);
    assertThat(McCabeThiele.stages(0.7, FEED, BOTTOMS, 10_000, 1)).isCloseTo(fewest, within(0.01));
  }

  @Test
  void aStrengthBeyondTheAzeotropeHasNoStages() {
    assertThat(McCabeThiele.minimumStages(0.92, BOTTOMS)).isInfinite();
    Map<String, Double> inputs = Map.of("distillate", 0.92, "feed", 0.03, "feedQuality", 1.0);
    assertThatThrownBy(() -> FormulaBook.standard().evaluate("ethanol.minimum-reflux", inputs))
        .isInstanceOf(Faults.class);
  }
}
