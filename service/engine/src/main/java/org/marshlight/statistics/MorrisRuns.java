package org.marshlight.statistics;

import java.util.Arrays;
import org.apache.commons.math3.random.MersenneTwister;

/**
 * The runs of a screening by elementary effects (Morris 1991): trajectories in which one input
 * after the other is moved by two of four levels, in an order of their own. The levels are the
 * middles of the quarters of each input's probability, so that no input is taken to an end it may
 * not have.
 *
 * @param points a row for each run, trajectory by trajectory
 * @param moved input that each run moved; -1 in the first run of a trajectory
 */
public record MorrisRuns(double[][] points, int[] moved) {

  /** How far an input is moved, as a probability. */
  private static final double STEP = 0.5;

  private static final double[] LOWER_LEVELS = {0.125, 0.375};

  /**
   * A design.
   *
   * @param trajectories how often each input is moved
   * @param inputs how many inputs
   * @param seed seed of starts and orders
   */
  public static MorrisRuns of(int trajectories, int inputs, long seed) {
    MersenneTwister random = new MersenneTwister(seed);
    double[][] points = new double[trajectories * (inputs + 1)][];
    int[] moved = new int[points.length];
    int run = 0;
    for (int trajectory = 0; trajectory < trajectories; trajectory++) {
      double[] point = new double[inputs];
      boolean[] upwards = new boolean[inputs];
      for (int i = 0; i < inputs; i++) {
        upwards[i] = random.nextBoolean();
        point[i] = LOWER_LEVELS[random.nextInt(LOWER_LEVELS.length)] + (upwards[i] ? 0 : STEP);
      }
      moved[run] = -1;
      points[run++] = point.clone();
      for (int input : shuffled(inputs, random)) {
        point[input] += upwards[input] ? STEP : -STEP;
        moved[run] = input;
        points[run++] = point.clone();
      }
    }
    return new MorrisRuns(points, moved);
  }

  /** How many runs the design takes. */
  public int runs() {
    return points.length;
  }

  /**
   * Mean size of the elementary effects of each input: what the figure moves by when the input is
   * taken through half of its probability, divided by that half. Moves between runs of which one
   * has no figure are left out; NaN if none is left.
   *
   * @param values the figure in each run
   */
  public double[] meanAbsoluteEffects(double[] values) {
    int inputs = points[0].length;
    double[] sums = new double[inputs];
    int[] counts = new int[inputs];
    for (int run = 0; run < moved.length; run++) {
      if (moved[run] >= 0 && !Double.isNaN(values[run]) && !Double.isNaN(values[run - 1])) {
        sums[moved[run]] += Math.abs(values[run] - values[run - 1]) / STEP;
        counts[moved[run]]++;
      }
    }
    Arrays.setAll(sums, i -> counts[i] == 0 ? Double.NaN : sums[i] / counts[i]);
    return sums;
  }

  private static int[] shuffled(int count, MersenneTwister random) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int other = random.nextInt(i + 1);
      order[i] = order[other];
      order[other] = i;
    }
    return order;
  }
}
