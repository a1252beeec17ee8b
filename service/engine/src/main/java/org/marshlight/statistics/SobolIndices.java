package org.marshlight.statistics;

import java.util.Arrays;
import org.apache.commons.math3.random.MersenneTwister;

/**
 * How much of the variance of a figure each input carries: alone (first order, by the estimator of
 * Saltelli and others 2010) and with all its interactions (total, by Jansen's). Nothing is clipped:
 * an index of nought may come out a little below it.
 *
 * @param first first-order index of each input
 * @param total total index of each input
 */
public record SobolIndices(double[] first, double[] total) {

  /** Share of resamples below the lower end of an interval, and above the upper. */
  private static final double TAIL = 0.025;

  /**
   * Indices of a figure; NaN if it does not vary.
   *
   * @param values the figure in each run of a {@link SobolRuns}; points with a run that has none
   *     are left out
   * @param inputs how many inputs the design has
   */
  public static SobolIndices of(double[] values, int inputs) {
    double[][] rows = rows(values, inputs);
    int[] all = new int[rows.length];
    Arrays.setAll(all, i -> i);
    return estimate(rows, all, inputs);
  }

  /**
   * Interval of 95 percent for each index, from resampled points.
   *
   * @param values the figure in each run
   * @param inputs how many inputs the design has
   * @param resamples how often the points are drawn anew
   * @param seed seed of the resampling
   */
  public static Intervals intervals(double[] values, int inputs, int resamples, long seed) {
    double[][] rows = rows(values, inputs);
    MersenneTwister random = new MersenneTwister(seed);
    double[][] first = new double[inputs][resamples];
    double[][] total = new double[inputs][resamples];
    int[] chosen = new int[rows.length];
    for (int sample = 0; sample < resamples; sample++) {
      for (int i = 0; i < chosen.length; i++) {
        chosen[i] = random.nextInt(rows.length);
      }
      SobolIndices indices = estimate(rows, chosen, inputs);
      for (int input = 0; input < inputs; input++) {
        first[input][sample] = indices.first[input];
        total[input][sample] = indices.total[input];
      }
    }
    return new Intervals(
        ends(first, TAIL), ends(first, 1 - TAIL), ends(total, TAIL), ends(total, 1 - TAIL));
  }

  private static double[] ends(double[][] samples, double p) {
    double[] ends = new double[samples.length];
    for (int input = 0; input < ends.length; input++) {
      Sample sample = Sample.of(samples[input]);
      ends[input] = sample.size() == 0 ? Double.NaN : sample.percentile(p);
    }
    return ends;
  }

  /** Values point by point, centred on their mean so that a large constant costs no digits. */
  private static double[][] rows(double[] values, int inputs) {
    int width = inputs + 2;
    double[][] rows = new double[values.length / width][];
    int kept = 0;
    double sum = 0;
    for (int from = 0; from < values.length; from += width) {
      double[] row = Arrays.copyOfRange(values, from, from + width);
      if (Arrays.stream(row).noneMatch(Double::isNaN)) {
        rows[kept++] = row;
        sum += row[0] + row[1];
      }
    }
    double mean = kept == 0 ? 0 : sum / (2 * kept);
    double[][] centred = Arrays.copyOf(rows, kept);
    for (double[] row : centred) {
      for (int i = 0; i < width; i++) {
        row[i] -= mean;
      }
    }
    return centred;
  }

  private static SobolIndices estimate(double[][] rows, int[] chosen, int inputs) {
    double sum = 0;
    double squares = 0;
    double[] first = new double[inputs];
    double[] total = new double[inputs];
    for (int index : chosen) {
      double[] row = rows[index];
      sum += row[0] + row[1];
      squares += row[0] * row[0] + row[1] * row[1];
      for (int input = 0; input < inputs; input++) {
        double changed = row[input + 2];
        first[input] += row[1] * (changed - row[0]);
        total[input] += (row[0] - changed) * (row[0] - changed) / 2;
      }
    }
    int count = chosen.length;
    double mean = sum / (2 * count);
    double variance = squares / (2 * count) - mean * mean;
    for (int input = 0; input < inputs; input++) {
      first[input] = variance > 0 ? first[input] / count / variance : Double.NaN;
      total[input] = variance > 0 ? total[input] / count / variance : Double.NaN;
    }
    return new SobolIndices(first, total);
  }

  /**
   * Intervals of 95 percent.
   *
   * @param firstLow lower end for each first-order index
   * @param firstHigh upper end
   * @param totalLow lower end for each total index
   * @param totalHigh upper end
   */
  public record Intervals(
      double[] firstLow, double[] firstHigh, double[] totalLow, double[] totalHigh) {}
}
