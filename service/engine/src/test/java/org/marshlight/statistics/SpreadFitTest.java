package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.Distribution;

class SpreadFitTest {

  private static final double[][] RANGES = {
    {1, 2, 4}, {1, 1, 4}, {1, 4, 4}, {-3, -2.9, 5}, {0.1, 0.3, 0.31}
  };

  @ParameterizedTest
  @EnumSource(names = "FIXED", mode = EnumSource.Mode.EXCLUDE)
  void lowAndHighAreTheTenthAndNinetiethPercentile(Distribution distribution) {
    for (double[] range : RANGES) {
      if (distribution == Distribution.LOGNORMAL && range[0] <= 0) {
        continue;
      }
      Spread spread = SpreadFit.of(distribution, range[0], range[1], range[2]);
      boolean sided = distribution != Distribution.LOGNORMAL || range[1] > range[0];
      if (sided) {
        assertThat(spread.quantile(0.1)).isCloseTo(range[0], within(1e-6));
        assertThat(spread.cumulative(range[0])).isCloseTo(0.1, within(1e-6));
      }
      if (distribution != Distribution.LOGNORMAL || range[1] < range[2]) {
        assertThat(spread.quantile(0.9)).isCloseTo(range[2], within(1e-6));
      }
    }
  }

  @Test
  void theCentralValueIsTheModeOrTheMedian() {
    Spread.Triangular triangular =
        (Spread.Triangular) SpreadFit.of(Distribution.TRIANGULAR, 1, 2, 4);
    Spread.Pert pert = (Spread.Pert) SpreadFit.of(Distribution.PERT, 1, 2, 4);
    assertThat(triangular.mode()).isEqualTo(2);
    assertThat(pert.mode()).isEqualTo(2);
    assertThat(SpreadFit.of(Distribution.LOGNORMAL, 1, 2, 9).quantile(0.5))
        .isCloseTo(2, within(1e-12));
  }

  @Test
  void quantilesAndProbabilitiesAgree() {
    for (Spread spread :
        List.of(
            SpreadFit.of(Distribution.UNIFORM, 1, 2, 4),
            SpreadFit.of(Distribution.TRIANGULAR, 1, 2, 4),
            SpreadFit.of(Distribution.PERT, 1, 2, 4),
            SpreadFit.of(Distribution.LOGNORMAL, 1, 2, 9),
            SpreadFit.of(Distribution.TRIANGULAR, 1, 2, 4).within(0.9, 3),
            new Spread.Normal(2, 0.5))) {
      for (double p : new double[] {0.003, 0.2, 0.5, 0.8, 0.997}) {
        assertThat(spread.cumulative(spread.quantile(p))).isCloseTo(p, within(1e-7));
      }
    }
  }

  @Test
  void everyCoefficientThatSpreadsIsDrawnWithinWhatAPlanMaySet() {
    for (CoefficientRow row : CoefficientBook.standard().rows()) {
      if (row.distribution() == Distribution.FIXED || row.low() == row.high()) {
        continue;
      }
      Spread spread = SpreadFit.of(row);
      double last = Double.NEGATIVE_INFINITY;
      for (double p : new double[] {1e-16, 0.1, 0.5, 0.9, 1 - 1e-16}) {
        double value = spread.quantile(p);
        assertThat(value).as(row.id()).isBetween(row.least(), row.most());
        assertThat(value).as(row.id()).isGreaterThanOrEqualTo(last);
        last = value;
      }
    }
  }

  @Test
  void whatDoesNotSpreadIsRefused() {
    assertThatThrownBy(() -> SpreadFit.of(Distribution.TRIANGULAR, 1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SpreadFit.of(Distribution.FIXED, 1, 2, 3))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
