package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SensitivityTest {

  private static double[] product(SobolRuns runs, double offset) {
    double[] values = new double[runs.runs()];
    for (int run = 0; run < values.length; run++) {
      double[] x = runs.point(run);
      values[run] = offset + x[0] * x[1];
    }
    return values;
  }

  /** Variance of x1 x2 over the unit square is 7/144, of which 1/48 falls to each alone. */
  @Test
  void indicesOfAProductAreThoseOfItsIntegrals() {
    SobolIndices indices = SobolIndices.of(product(SobolRuns.of(4096, 2, 1), 0), 2);
    assertThat(indices.first()[0]).isCloseTo(3.0 / 7, within(0.005));
    assertThat(indices.total()[0]).isCloseTo(4.0 / 7, within(0.005));
  }

  @Test
  void aLargeConstantChangesNoIndex() {
    SobolRuns runs = SobolRuns.of(512, 2, 1);
    SobolIndices plain = SobolIndices.of(product(runs, 0), 2);
    SobolIndices lifted = SobolIndices.of(product(runs, 1000), 2);
    assertThat(lifted.first()[1]).isCloseTo(plain.first()[1], within(1e-9));
    assertThat(lifted.total()[1]).isCloseTo(plain.total()[1], within(1e-9));
  }

  @Test
  void intervalsHoldTheTruth() {
    double[] values = product(SobolRuns.of(1024, 2, 1), 0);
    SobolIndices.Intervals intervals = SobolIndices.intervals(values, 2, 200, 1);
    assertThat(3.0 / 7).isBetween(intervals.firstLow()[0], intervals.firstHigh()[0]);
    assertThat(4.0 / 7).isBetween(intervals.totalLow()[0], intervals.totalHigh()[0]);
    assertThat(intervals.totalHigh()[0] - intervals.totalLow()[0]).isLessThan(0.15);
  }

  @Test
  void pointsWithoutAFigureAreLeftOut() {
    SobolRuns runs = SobolRuns.of(1024, 2, 1);
    double[] values = product(runs, 0);
    values[17] = Double.NaN;
    assertThat(SobolIndices.of(values, 2).total()[0]).isCloseTo(4.0 / 7, within(0.02));
  }

  @Test
  void aFigureThatDoesNotVaryHasNoIndices() {
    assertThat(SobolIndices.of(new double[40], 2).first()).containsOnly(Double.NaN);
  }

  /** The elementary effects of a linear model are its weights, whatever the trajectory. */
  @Test
  void effectsOfALinearModelAreItsWeights() {
    MorrisRuns runs = MorrisRuns.of(4, 3, 9);
    double[] values = new double[runs.runs()];
    for (int run = 0; run < values.length; run++) {
      double[] x = runs.points()[run];
      values[run] = 5 + 2 * x[0] - 3 * x[2];
    }
    double[] effects = runs.meanAbsoluteEffects(values);
    assertThat(effects).containsExactly(new double[] {2, 0, 3}, within(1e-12));
  }
}
