package org.marshlight.statistics;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.util.FastMath;

/**
 * Ties coordinates of points to each other by a normal copula with stated rank correlations. Each
 * coordinate stays evenly spread by itself.
 */
public final class RankCorrelation {

  private static final double SYMMETRY = 1e-12;
  private static final double POSITIVITY = 1e-10;

  private final int[] places;
  private final RealMatrix lower;

  private RankCorrelation(int[] places, RealMatrix lower) {
    this.places = places;
    this.lower = lower;
  }

  /**
   * A copula.
   *
   * @param places coordinates that are tied
   * @param ranks Spearman's rank correlation of each two of them, 1 on the diagonal
   * @throws IllegalArgumentException if no quantities can be correlated so
   */
  public static RankCorrelation of(int[] places, double[][] ranks) {
    double[][] normal = new double[places.length][places.length];
    for (int i = 0; i < places.length; i++) {
      for (int j = 0; j < places.length; j++) {
        normal[i][j] = i == j ? 1 : 2 * FastMath.sin(FastMath.PI * ranks[i][j] / 6);
      }
    }
    try {
      RealMatrix matrix = new Array2DRowRealMatrix(normal, false);
      return new RankCorrelation(
          places.clone(), new CholeskyDecomposition(matrix, SYMMETRY, POSITIVITY).getL());
    } catch (NonPositiveDefiniteMatrixException e) {
      throw new IllegalArgumentException("correlations contradict each other", e);
    }
  }

  /** Ties the coordinates of a point, in place. */
  public void tie(double[] point) {
    double[] scores = new double[places.length];
    for (int i = 0; i < scores.length; i++) {
      scores[i] = Quantiles.normal(point[places[i]], 0, 1);
    }
    double[] tied = lower.operate(scores);
    for (int i = 0; i < scores.length; i++) {
      double p = Erf.erfc(-tied[i] / FastMath.sqrt(2)) / 2;
      point[places[i]] = Math.max(Double.MIN_NORMAL, Math.min(1 - 0x1.0p-53, p));
    }
  }
}
