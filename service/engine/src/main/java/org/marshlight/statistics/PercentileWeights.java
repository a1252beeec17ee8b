package org.marshlight.statistics;

import org.apache.commons.math3.special.Beta;

/**
 * How likely each order statistic of a sample is to be the percentile sought, by Maritz and Jarrett
 * 1978: steps of the beta distribution of that order statistic. The spread of a sample under these
 * weights is the standard error of its percentile.
 */
public final class PercentileWeights {

  /** Weights this many standard deviations off are nought to the last digit. */
  private static final double REACH = 9;

  private final int first;
  private final double[] weights;

  private PercentileWeights(int first, double[] weights) {
    this.first = first;
    this.weights = weights;
  }

  /**
   * Weights of a percentile.
   *
   * @param size size of the sample
   * @param p probability, above 0 and below 1
   */
  public static PercentileWeights of(int size, double p) {
    double before = p * (size + 1);
    double after = (1 - p) * (size + 1);
    double reach = REACH * Math.sqrt(p * (1 - p) / (size + 2)) * size + 1;
    int from = (int) Math.max(0, Math.floor(p * size - reach));
    int to = (int) Math.min(size, Math.ceil(p * size + reach));
    double[] weights = new double[to - from];
    double below = Beta.regularizedBeta((double) from / size, before, after);
    for (int i = 0; i < weights.length; i++) {
      double upTo = Beta.regularizedBeta((from + i + 1.0) / size, before, after);
      weights[i] = upTo - below;
      below = upTo;
    }
    return new PercentileWeights(from, weights);
  }

  /** Standard deviation of a sorted sample under the weights. */
  double deviation(double[] sorted) {
    double mean = 0;
    for (int i = 0; i < weights.length; i++) {
      mean += weights[i] * sorted[first + i];
    }
    double variance = 0;
    for (int i = 0; i < weights.length; i++) {
      double off = sorted[first + i] - mean;
      variance += weights[i] * off * off;
    }
    return Math.sqrt(variance);
  }
}
