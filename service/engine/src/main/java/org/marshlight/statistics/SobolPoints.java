package org.marshlight.statistics;

import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Points that fill the unit cube evenly: the Sobol sequence with the direction numbers of Joe and
 * Kuo, scrambled by a digital shift. Each coordinate's 52 bits are combined by exclusive or with
 * bits of its own drawn from a seed, which keeps the evenness, makes points of different seeds
 * independent, and spares the origin; half a step is added, so that no coordinate is 0 or 1.
 *
 * <p>The direction numbers reach to {@value #MOST_EVEN} coordinates; further ones are plain
 * pseudo-random numbers of the same seed.
 */
public final class SobolPoints {

  /** Coordinates that follow the sequence. */
  public static final int MOST_EVEN = 1000;

  private static final double STEPS = 0x1.0p52;

  private SobolPoints() {}

  /**
   * Scrambled points.
   *
   * @param count how many
   * @param dimension coordinates of each
   * @param seed any whole number; the same seed gives the same points
   * @return one row of coordinates, above 0 and below 1, for each point
   */
  public static double[][] scrambled(int count, int dimension, long seed) {
    MersenneTwister random = new MersenneTwister(seed);
    int even = Math.min(dimension, MOST_EVEN);
    long[] shifts = new long[even];
    for (int i = 0; i < even; i++) {
      shifts[i] = random.nextLong() >>> 12;
    }
    double[][] points = new double[count][dimension];
    SobolSequenceGenerator sequence = even == 0 ? null : new SobolSequenceGenerator(even);
    for (double[] point : points) {
      double[] plain = even == 0 ? point : sequence.nextVector();
      for (int i = 0; i < dimension; i++) {
        long bits = i < even ? (long) (plain[i] * STEPS) ^ shifts[i] : random.nextLong() >>> 12;
        point[i] = (bits + 0.5) / STEPS;
      }
    }
    return points;
  }

  /**
   * A coordinate of the sequence before it is scrambled.
   *
   * @param index number of the point, from 0
   * @param dimension number of the coordinate, from 1
   */
  @Formula(
      id = "statistics.sobol-coordinate",
      symbol = "x",
      expression = "exclusive or of the direction numbers of the bits of the index's Gray code",
      unit = "1",
      meaning = "Coordinate of a point of the Sobol sequence before it is scrambled.",
      source = "joe-kuo-2008")
  public static double coordinate(
      @Argument(symbol = "i", unit = "1", min = 0, max = 1e6) double index,
      @Argument(symbol = "d", unit = "1", min = 1, max = MOST_EVEN) double dimension) {
    int coordinate = (int) dimension;
    return new SobolSequenceGenerator(coordinate).skipTo((int) index)[coordinate - 1];
  }
}
