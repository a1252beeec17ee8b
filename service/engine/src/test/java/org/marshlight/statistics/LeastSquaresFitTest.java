package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class LeastSquaresFitTest {

  private static UnaryOperator<List<double[]>> each(UnaryOperator<double[]> model) {
    return sets -> sets.stream().map(model).toList();
  }

  private static LeastSquaresFit line(double[] measured, double deviation, double most) {
    double[] deviations = {deviation, deviation, deviation, deviation};
    return new LeastSquaresFit(
        each(b -> new double[] {b[0], b[0] + b[1], b[0] + 2 * b[1], b[0] + 3 * b[1]}),
        measured,
        deviations,
        new double[] {-10, -10},
        new double[] {10, most});
  }

  /** A straight line by the textbook: slope 0.95, its deviation 0.5/sqrt(sum of (x - mean)^2). */
  @Test
  void aLineIsFittedAsByHand() {
    LeastSquaresFit.Result fit =
        line(new double[] {1, 2, 2.5, 4}, 0.5, 10).fit(new double[] {0, 0}, 50);
    assertThat(fit.parameters()[1]).isCloseTo(0.95, within(1e-8));
    assertThat(fit.parameters()[0]).isCloseTo(0.95, within(1e-8));
    assertThat(fit.deviation(1)).isCloseTo(0.5 / Math.sqrt(5), within(1e-6));
    assertThat(fit.correlation(0, 1)).isNegative();
  }

  @Test
  void aBoundHolds() {
    LeastSquaresFit.Result fit =
        line(new double[] {1, 2, 3, 4}, 0.5, 0.6).fit(new double[] {0, 0}, 200);
    assertThat(fit.parameters()[1]).isEqualTo(0.6);
    assertThat(fit.parameters()[0]).isCloseTo(1.6, within(1e-6));
    assertThat(fit.deviation(1)).isNaN();
  }

  @Test
  void whatTheDataDoNotTellHasNoFiniteInterval() {
    LeastSquaresFit fit =
        new LeastSquaresFit(
            each(b -> new double[] {b[0] + b[1], 2 * (b[0] + b[1])}),
            new double[] {1, 2},
            new double[] {1, 1},
            new double[] {-10, -10},
            new double[] {10, 10});
    LeastSquaresFit.Result result = fit.fit(new double[] {0.2, 0.2}, 50);
    assertThat(result.deviation(0)).isInfinite();
    assertThat(result.parameters()[0] + result.parameters()[1]).isCloseTo(1, within(1e-8));
  }
}
