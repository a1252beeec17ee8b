package org.marshlight.statistics;

/**
 * The runs from which Sobol indices are estimated: two samples A and B of points, and for each
 * input A again with that input taken from B. The runs of one point of A stand together: A, B, then
 * one for each input.
 *
 * @param a first sample, a row for each point
 * @param b second sample
 */
public record SobolRuns(double[][] a, double[][] b) {

  /**
   * A design on scrambled Sobol points; A and B are the halves of points with twice the
   * coordinates.
   */
  public static SobolRuns of(int points, int inputs, long seed) {
    double[][] both = SobolPoints.scrambled(points, 2 * inputs, seed);
    double[][] a = new double[points][inputs];
    double[][] b = new double[points][inputs];
    for (int point = 0; point < points; point++) {
      System.arraycopy(both[point], 0, a[point], 0, inputs);
      System.arraycopy(both[point], inputs, b[point], 0, inputs);
    }
    return new SobolRuns(a, b);
  }

  /** How many inputs there are. */
  public int inputs() {
    return a[0].length;
  }

  /** How many runs the design takes: points times inputs and two. */
  public int runs() {
    return a.length * (inputs() + 2);
  }

  /** The point of a run. */
  public double[] point(int run) {
    int row = run / (inputs() + 2);
    int place = run % (inputs() + 2);
    if (place == 1) {
      return b[row].clone();
    }
    double[] point = a[row].clone();
    if (place >= 2) {
      point[place - 2] = b[row][place - 2];
    }
    return point;
  }
}
