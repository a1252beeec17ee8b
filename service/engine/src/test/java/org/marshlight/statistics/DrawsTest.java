package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;
import org.junit.jupiter.api.Test;

class DrawsTest {

  @Test
  void scrambledPointsKeepTheEvennessOfTheSequence() {
    double[][] points = SobolPoints.scrambled(64, 5, 7);
    for (int dimension = 0; dimension < 5; dimension++) {
      int[] counts = new int[64];
      for (double[] point : points) {
        counts[(int) (point[dimension] * 64)]++;
      }
      assertThat(counts).as("one point in each of 64 bins").containsOnly(1);
    }
  }

  /**
   * The first two coordinates of the sequence are a net: 64 points leave no box of area 1/64 empty,
   * whatever its shape, scrambled or not.
   */
  @Test
  void scrambledPointsAreStillANet() {
    double[][] points = SobolPoints.scrambled(64, 2, 3);
    for (int columns = 1; columns <= 64; columns *= 2) {
      int rows = 64 / columns;
      int[] counts = new int[64];
      for (double[] point : points) {
        counts[(int) (point[0] * columns) * rows + (int) (point[1] * rows)]++;
      }
      assertThat(counts).as("%d by %d", columns, rows).containsOnly(1);
    }
  }

  @Test
  void aSeedGivesItsPointsAndNoOther() {
    assertThat(SobolPoints.scrambled(32, 4, 1)).isDeepEqualTo(SobolPoints.scrambled(32, 4, 1));
    assertThat(SobolPoints.scrambled(1, 4, 1)[0]).isNotEqualTo(SobolPoints.scrambled(1, 4, 2)[0]);
  }

  @Test
  void coordinatesBeyondTheSequenceAreDrawnToo() {
    double[][] points = SobolPoints.scrambled(500, SobolPoints.MOST_EVEN + 2, 1);
    double[] last = Arrays.stream(points).mapToDouble(p -> p[SobolPoints.MOST_EVEN + 1]).toArray();
    assertThat(Sample.of(last).mean()).isCloseTo(0.5, within(0.05));
    assertThat(last).doesNotContain(0, 1);
  }

  @Test
  void ranksAreCorrelatedAsStated() {
    double[][] points = SobolPoints.scrambled(4096, 3, 1);
    RankCorrelation ties =
        RankCorrelation.of(new int[] {0, 2}, new double[][] {{1, -0.7}, {-0.7, 1}});
    for (double[] point : points) {
      ties.tie(point);
    }
    double[] first = Arrays.stream(points).mapToDouble(p -> p[0]).toArray();
    double[] third = Arrays.stream(points).mapToDouble(p -> p[2]).toArray();
    assertThat(new SpearmansCorrelation().correlation(first, third)).isCloseTo(-0.7, within(0.01));
    assertThat(Sample.of(third).percentile(0.25)).isCloseTo(0.25, within(0.01));
  }

  @Test
  void correlationsThatContradictEachOtherAreRefused() {
    double[][] impossible = {{1, 0.9, -0.9}, {0.9, 1, 0.9}, {-0.9, 0.9, 1}};
    assertThatThrownBy(() -> RankCorrelation.of(new int[] {0, 1, 2}, impossible))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The median of a large normal sample scatters by sqrt(pi/2)/sqrt(n): a textbook result. */
  @Test
  void theStandardErrorOfAPercentileIsThatOfTheory() {
    int size = 1000;
    double[] values = new double[size];
    for (int i = 0; i < size; i++) {
      values[i] = Quantiles.normal((i + 0.5) / size, 0, 1);
    }
    double error = Sample.of(values).standardError(PercentileWeights.of(size, 0.5));
    assertThat(error).isCloseTo(1.2533 / Math.sqrt(size), within(0.03 * error));
  }

  @Test
  void standardErrorsTellHowPercentilesOfIndependentSamplesScatter() {
    MersenneTwister random = new MersenneTwister(3);
    double[] ninetieths = new double[400];
    double errors = 0;
    for (int repeat = 0; repeat < ninetieths.length; repeat++) {
      double[] values = new double[200];
      for (int i = 0; i < values.length; i++) {
        values[i] = random.nextGaussian();
      }
      Sample sample = Sample.of(values);
      ninetieths[repeat] = sample.percentile(0.9);
      errors += sample.standardError(PercentileWeights.of(200, 0.9)) / ninetieths.length;
    }
    assertThat(errors).isCloseTo(Sample.of(ninetieths).deviation(), within(0.1 * errors));
  }

  @Test
  void theHistogramHoldsEveryValueOnce() {
    Sample sample = Sample.of(new double[] {0, 1, 1, Double.NaN, 2, 4});
    assertThat(sample.size()).isEqualTo(5);
    assertThat(sample.histogram(4))
        .containsExactly(new double[] {0.2, 0.4, 0.2, 0.2}, within(1e-15));
    assertThat(Sample.of(new double[] {3, 3}).histogram(2)).containsExactly(1, 0);
  }
}
