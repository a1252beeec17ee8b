package org.marshlight.statistics;

import java.util.Arrays;

/** Values of one figure over many draws. */
public final class Sample {

  private final double[] sorted;
  private final double mean;
  private final double deviation;

  private Sample(double[] sorted) {
    this.sorted = sorted;
    double sum = 0;
    for (double value : sorted) {
      sum += value;
    }
    mean = sum / sorted.length;
    double squares = 0;
    for (double value : sorted) {
      squares += (value - mean) * (value - mean);
    }
    deviation = sorted.length < 2 ? 0 : Math.sqrt(squares / (sorted.length - 1));
  }

  /**
   * A sample of the values that are numbers.
   *
   * @param values values; NaN where a draw has none
   */
  public static Sample of(double[] values) {
    double[] sorted = Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
    Arrays.sort(sorted);
    return new Sample(sorted);
  }

  /** How many values there are. */
  public int size() {
    return sorted.length;
  }

  /** Arithmetic mean. */
  public double mean() {
    return mean;
  }

  /** Standard deviation of the sample. */
  public double deviation() {
    return deviation;
  }

  public double least() {
    return sorted[0];
  }

  public double most() {
    return sorted[sorted.length - 1];
  }

  /**
   * A percentile, straight between the two order statistics about it.
   *
   * @param p probability, 0 to 1
   */
  public double percentile(double p) {
    double place = p * (sorted.length - 1);
    int below = (int) place;
    return below + 1 >= sorted.length
        ? sorted[sorted.length - 1]
        : sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
  }

  /** Standard error of a percentile, as if the draws were independent. */
  public double standardError(PercentileWeights weights) {
    return weights.deviation(sorted);
  }

  /**
   * Shares of the values in bins of equal width from the least to the most; all in the first if
   * they do not differ.
   *
   * @param bins how many
   */
  public double[] histogram(int bins) {
    double[] shares = new double[bins];
    double width = (most() - least()) / bins;
    for (double value : sorted) {
      int bin = width > 0 ? (int) ((value - least()) / width) : 0;
      shares[Math.min(bins - 1, bin)] += 1.0 / sorted.length;
    }
    return shares;
  }
}
