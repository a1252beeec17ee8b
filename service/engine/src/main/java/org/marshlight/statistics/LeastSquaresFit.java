package org.marshlight.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem.Evaluation;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.util.Pair;

/**
 * Fits parameters of a model to measured values by weighted least squares (Levenberg and
 * Marquardt). Slopes come from central differences.
 */
public final class LeastSquaresFit {

  private static final double CLOSE = 1e-12;

  /** Step of a central difference over the size of a parameter. */
  private static final double RELATIVE_STEP = 1e-5;

  /** A direction weaker than this share of the strongest is not told by the data. */
  private static final double WEAKEST = 1e-10;

  private final UnaryOperator<List<double[]>> model;
  private final double[] measured;
  private final double[] deviations;
  private final double[] least;
  private final double[] most;

  /**
   * A problem.
   *
   * @param model what the model gives for each of some sets of parameters, one value for each
   *     measured one; sets are worked together so that they can share the cores
   * @param measured measured values
   * @param deviations standard uncertainty of each measured value
   * @param least lower bound of each parameter
   * @param most upper bound of each parameter
   */
  public LeastSquaresFit(
      UnaryOperator<List<double[]>> model,
      double[] measured,
      double[] deviations,
      double[] least,
      double[] most) {
    this.model = model;
    this.measured = measured.clone();
    this.deviations = deviations.clone();
    this.least = least.clone();
    this.most = most.clone();
  }

  /**
   * Fits the parameters. A parameter that is driven against a bound stays there while the others
   * are fitted again.
   *
   * @param start where to begin, within the bounds
   * @param mostEvaluations how often the model and its slopes may be worked each time
   */
  public Result fit(double[] start, int mostEvaluations) {
    double[] parameters = start.clone();
    int[] free = IntStream.range(0, start.length).toArray();
    while (true) {
      Best best = new Best();
      boolean settled = settle(parameters, free, mostEvaluations, best);
      Evaluation optimum = best.evaluation;
      for (int i = 0; i < free.length; i++) {
        parameters[free[i]] = optimum.getPoint().getEntry(i);
      }
      int[] inside =
          Arrays.stream(free)
              .filter(i -> parameters[i] > least[i] && parameters[i] < most[i])
              .toArray();
      if (inside.length == free.length || inside.length == 0) {
        double[][] covariance = covariance(optimum.getJacobian(), free, start.length);
        return new Result(
            parameters,
            model.apply(List.of(parameters)).get(0),
            optimum.getCost() * optimum.getCost(),
            covariance,
            settled);
      }
      free = inside;
    }
  }

  /** Looks for the optimum of the free parameters; whether it was found in time. */
  private boolean settle(double[] at, int[] free, int mostEvaluations, Best best) {
    LeastSquaresProblem problem =
        new LeastSquaresBuilder()
            .start(Arrays.stream(free).mapToDouble(i -> at[i]).toArray())
            .target(new double[measured.length])
            .model((MultivariateJacobianFunction) point -> residuals(point, at, free))
            .parameterValidator(point -> bounded(point, free))
            .maxEvaluations(mostEvaluations)
            .maxIterations(mostEvaluations)
            .lazyEvaluation(false)
            .checker((iteration, previous, current) -> best.offer(current))
            .build();
    best.offer(problem.evaluate(bounded(problem.getStart(), free)));
    try {
      best.offer(
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(CLOSE)
              .withParameterRelativeTolerance(CLOSE)
              .withOrthoTolerance(CLOSE)
              .optimize(problem));
      return true;
    } catch (TooManyEvaluationsException | TooManyIterationsException e) {
      return false;
    }
  }

  private RealVector bounded(RealVector point, int[] free) {
    RealVector bounded = point.copy();
    for (int i = 0; i < free.length; i++) {
      bounded.setEntry(i, Math.max(least[free[i]], Math.min(most[free[i]], point.getEntry(i))));
    }
    return bounded;
  }

  /** Deviations of the model from what was measured, in standard uncertainties, with slopes. */
  private Pair<RealVector, RealMatrix> residuals(RealVector point, double[] at, int[] free) {
    double[] parameters = at.clone();
    for (int i = 0; i < free.length; i++) {
      parameters[free[i]] = point.getEntry(i);
    }
    double[][] ends = new double[free.length][];
    List<double[]> sets = new ArrayList<>(List.of(parameters));
    for (int i = 0; i < free.length; i++) {
      ends[i] = ends(parameters[free[i]], free[i]);
      sets.add(changed(parameters, free[i], ends[i][0]));
      sets.add(changed(parameters, free[i], ends[i][1]));
    }
    List<double[]> values = model.apply(sets);
    double[] residuals = new double[measured.length];
    double[][] slopes = new double[measured.length][free.length];
    for (int j = 0; j < residuals.length; j++) {
      residuals[j] = (values.get(0)[j] - measured[j]) / deviations[j];
      for (int i = 0; i < free.length; i++) {
        double rise = values.get(2 * i + 2)[j] - values.get(2 * i + 1)[j];
        slopes[j][i] = rise / (ends[i][1] - ends[i][0]) / deviations[j];
      }
    }
    return new Pair<>(
        new ArrayRealVector(residuals, false), new Array2DRowRealMatrix(slopes, false));
  }

  /** The two values of a parameter between which its slopes are taken. */
  private double[] ends(double value, int parameter) {
    double size = Math.abs(value);
    double step = RELATIVE_STEP * (size > 0 ? size : most[parameter] - least[parameter]);
    return new double[] {
      Math.max(least[parameter], value - step), Math.min(most[parameter], value + step)
    };
  }

  private static double[] changed(double[] parameters, int parameter, double value) {
    double[] changed = parameters.clone();
    changed[parameter] = value;
    return changed;
  }

  /**
   * Covariance of the parameters from the slopes at the optimum; infinite variance for a parameter
   * that takes part in a direction that the data do not tell, NaN for one held at a bound.
   */
  private static double[][] covariance(RealMatrix slopes, int[] free, int count) {
    double[][] ofFree = covariance(slopes);
    double[][] covariance = new double[count][count];
    for (double[] row : covariance) {
      Arrays.fill(row, Double.NaN);
    }
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free.length; j++) {
        covariance[free[i]][free[j]] = ofFree[i][j];
      }
    }
    return covariance;
  }

  private static double[][] covariance(RealMatrix slopes) {
    int count = slopes.getColumnDimension();
    double[] scales = new double[count];
    RealMatrix scaled = slopes.copy();
    for (int i = 0; i < count; i++) {
      double norm = slopes.getColumnVector(i).getNorm();
      scales[i] = norm > 0 ? norm : 1;
      scaled.setColumnVector(i, slopes.getColumnVector(i).mapDivide(scales[i]));
    }
    SingularValueDecomposition parts = new SingularValueDecomposition(scaled);
    double[] strengths = parts.getSingularValues();
    RealMatrix directions = parts.getV();
    double[][] covariance = new double[count][count];
    for (int d = 0; d < count; d++) {
      boolean told = d < strengths.length && strengths[d] > WEAKEST * Math.max(1, strengths[0]);
      for (int i = 0; i < count; i++) {
        for (int j = 0; j < count; j++) {
          double shares =
              d < strengths.length ? directions.getEntry(i, d) * directions.getEntry(j, d) : 1;
          if (told) {
            covariance[i][j] += shares / (strengths[d] * strengths[d]) / (scales[i] * scales[j]);
          } else if (i == j && shares > WEAKEST) {
            covariance[i][i] = Double.POSITIVE_INFINITY;
          }
        }
      }
    }
    return covariance;
  }

  /**
   * What a fit came to.
   *
   * @param parameters fitted parameters, within their bounds
   * @param values what the model gives for them
   * @param squares sum of the squared deviations, in standard uncertainties
   * @param covariance covariance of the parameters if the standard uncertainties are right
   * @param settled whether the optimum was found; if not, this is the best that was seen
   */
  public record Result(
      double[] parameters,
      double[] values,
      double squares,
      double[][] covariance,
      boolean settled) {

    /**
     * Standard uncertainty of a parameter; infinite if the data do not tell it, NaN if it is held
     * at a bound.
     */
    public double deviation(int parameter) {
      return Math.sqrt(covariance[parameter][parameter]);
    }

    /** Correlation of two fitted parameters; NaN where the data do not tell one of them. */
    public double correlation(int first, int second) {
      return covariance[first][second] / (deviation(first) * deviation(second));
    }
  }

  /** The best point seen. */
  private static final class Best {

    private Evaluation evaluation;

    /** Takes a point if it is better; never says that the search is done. */
    boolean offer(Evaluation other) {
      if (evaluation == null || other.getCost() <= evaluation.getCost()) {
        evaluation = other;
      }
      return false;
    }
  }
}
