package org.marshlight.statistics;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.DataFile;
import org.marshlight.evidence.Formula;

/**
 * Problems with known answers, worked by the same methods that the studies use, so that anyone can
 * see how near those methods come.
 */
public final class ReferenceProblems {

  private static final double ISHIGAMI_A = 7;
  private static final double ISHIGAMI_B = 0.1;
  private static final int ISHIGAMI_INPUTS = 3;
  private static final double[] WEIGHTS = {1, 2, 3};
  private static final double TAIL = 0.025;

  /** Half of the width of a rectangular distribution over its standard deviation. */
  private static final double RECTANGLE = FastMath.sqrt(3);

  private ReferenceProblems() {}

  /**
   * First-order index of an input of Ishigami's function.
   *
   * @param input number of the input, from 1
   * @param points points of each of the two samples
   * @param seed seed of the points
   */
  @Formula(
      id = "statistics.ishigami-first-order",
      symbol = "S_i",
      expression = "V_i/V of sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, x uniform from -pi to pi",
      unit = "1",
      meaning = "First-order Sobol index of Ishigami's function as the sensitivity study finds it.",
      source = "saltelli-2007",
      equation = "chapter 4, exercise 5")
  public static double ishigamiFirstOrder(
      @Argument(symbol = "i", unit = "1", min = 1, max = ISHIGAMI_INPUTS) double input,
      @Argument(symbol = "N", unit = "1", min = 16, max = 16384) double points,
      @Argument(symbol = "seed", unit = "1", min = 0, max = 1e9) double seed) {
    return ishigami((int) points, (long) seed).first()[(int) input - 1];
  }

  /**
   * Total index of an input of Ishigami's function.
   *
   * @param input number of the input, from 1
   * @param points points of each of the two samples
   * @param seed seed of the points
   */
  @Formula(
      id = "statistics.ishigami-total",
      symbol = "S_Ti",
      expression = "E_i/V of sin x1 + 7 sin^2 x2 + 0.1 x3^4 sin x1, x uniform from -pi to pi",
      unit = "1",
      meaning = "Total Sobol index of Ishigami's function as the sensitivity study finds it.",
      source = "saltelli-2007",
      equation = "chapter 4, exercise 5")
  public static double ishigamiTotal(
      @Argument(symbol = "i", unit = "1", min = 1, max = ISHIGAMI_INPUTS) double input,
      @Argument(symbol = "N", unit = "1", min = 16, max = 16384) double points,
      @Argument(symbol = "seed", unit = "1", min = 0, max = 1e9) double seed) {
    return ishigami((int) points, (long) seed).total()[(int) input - 1];
  }

  private static SobolIndices ishigami(int points, long seed) {
    SobolRuns design = SobolRuns.of(points, ISHIGAMI_INPUTS, seed);
    double[] values = new double[design.runs()];
    for (int run = 0; run < values.length; run++) {
      double[] x = design.point(run);
      for (int i = 0; i < x.length; i++) {
        x[i] = Quantiles.uniform(x[i], -FastMath.PI, FastMath.PI);
      }
      double second = FastMath.sin(x[1]);
      values[run] =
          FastMath.sin(x[0]) * (1 + ISHIGAMI_B * x[2] * x[2] * x[2] * x[2])
              + ISHIGAMI_A * second * second;
    }
    return SobolIndices.of(values, ISHIGAMI_INPUTS);
  }

  /**
   * First-order index of an input of an additive model.
   *
   * @param input number of the input, from 1
   * @param points points of each of the two samples
   * @param seed seed of the points
   */
  @Formula(
      id = "statistics.additive-first-order",
      symbol = "S_i",
      expression = "V_i/V of x1 + 2 x2 + 3 x3, x uniform from 0 to 1",
      unit = "1",
      meaning = "First-order Sobol index of an additive model as the sensitivity study finds it.",
      source = "saltelli-2007")
  public static double additiveFirstOrder(
      @Argument(symbol = "i", unit = "1", min = 1, max = 3) double input,
      @Argument(symbol = "N", unit = "1", min = 16, max = 16384) double points,
      @Argument(symbol = "seed", unit = "1", min = 0, max = 1e9) double seed) {
    return additive((int) points, (long) seed).first()[(int) input - 1];
  }

  /**
   * Total index of an input of an additive model; the same as its first-order index.
   *
   * @param input number of the input, from 1
   * @param points points of each of the two samples
   * @param seed seed of the points
   */
  @Formula(
      id = "statistics.additive-total",
      symbol = "S_Ti",
      expression = "E_i/V of x1 + 2 x2 + 3 x3, x uniform from 0 to 1",
      unit = "1",
      meaning = "Total Sobol index of an additive model as the sensitivity study finds it.",
      source = "saltelli-2007")
  public static double additiveTotal(
      @Argument(symbol = "i", unit = "1", min = 1, max = 3) double input,
      @Argument(symbol = "N", unit = "1", min = 16, max = 16384) double points,
      @Argument(symbol = "seed", unit = "1", min = 0, max = 1e9) double seed) {
    return additive((int) points, (long) seed).total()[(int) input - 1];
  }

  private static SobolIndices additive(int points, long seed) {
    SobolRuns design = SobolRuns.of(points, WEIGHTS.length, seed);
    double[] values = new double[design.runs()];
    for (int run = 0; run < values.length; run++) {
      double[] x = design.point(run);
      for (int i = 0; i < x.length; i++) {
        values[run] += WEIGHTS[i] * x[i];
      }
    }
    return SobolIndices.of(values, WEIGHTS.length);
  }

  /**
   * Half of the interval that holds 95 percent of the sum of four rectangular quantities.
   *
   * @param fourth standard deviation of the fourth; the others have 1
   * @param draws how many draws
   * @param seed seed of the draws
   */
  @Formula(
      id = "statistics.rectangular-sum-half-interval",
      symbol = "U",
      expression = "(x_0.975 - x_0.025)/2 of the sum of four rectangular quantities",
      unit = "1",
      meaning =
          "Half of the 95 percent interval of an additive model as uncertainty draws find it.",
      source = "jcgm-101",
      equation = "9.2")
  public static double rectangularSumHalfInterval(
      @Argument(symbol = "u_4", unit = "1", min = 0, max = 1000) double fourth,
      @Argument(symbol = "N", unit = "1", min = 16, max = 16384) double draws,
      @Argument(symbol = "seed", unit = "1", min = 0, max = 1e9) double seed) {
    double[] half = {RECTANGLE, RECTANGLE, RECTANGLE, RECTANGLE * fourth};
    double[][] points = SobolPoints.scrambled((int) draws, half.length, (long) seed);
    double[] sums = new double[points.length];
    for (int draw = 0; draw < sums.length; draw++) {
      for (int i = 0; i < half.length; i++) {
        sums[draw] += Quantiles.uniform(points[draw][i], -half[i], half[i]);
      }
    }
    Sample sample = Sample.of(sums);
    return (sample.percentile(1 - TAIL) - sample.percentile(TAIL)) / 2;
  }

  /**
   * Parameter of a reference problem of nonlinear least squares, from the second of its two starts.
   *
   * @param parameter number of the parameter, from 1
   */
  @Formula(
      id = "statistics.mgh17-parameter",
      symbol = "b_i",
      expression = "least squares of y = b1 + b2 exp(-x b4) + b3 exp(-x b5) over 33 observations",
      unit = "1",
      meaning = "Fitted parameter of a reference problem as the calibration finds it.",
      source = "nist-strd",
      equation = "MGH17")
  public static double mgh17Parameter(
      @Argument(symbol = "i", unit = "1", min = 1, max = 5) double parameter) {
    return mgh17().parameters()[(int) parameter - 1];
  }

  /**
   * Standard deviation of a parameter of the same problem.
   *
   * @param parameter number of the parameter, from 1
   */
  @Formula(
      id = "statistics.mgh17-deviation",
      symbol = "s(b_i)",
      expression = "sqrt(S/(n - p) C_ii) with C the inverse of the product of the slopes",
      unit = "1",
      meaning = "Standard deviation of that parameter as the calibration finds it.",
      source = "nist-strd",
      equation = "MGH17")
  public static double mgh17Deviation(
      @Argument(symbol = "i", unit = "1", min = 1, max = 5) double parameter) {
    LeastSquaresFit.Result fit = mgh17();
    double freedom = fit.values().length - fit.parameters().length;
    return fit.deviation((int) parameter - 1) * FastMath.sqrt(fit.squares() / freedom);
  }

  private static LeastSquaresFit.Result mgh17() {
    List<CSVRecord> rows = DataFile.rows(ReferenceProblems.class, "mgh17.csv");
    double[] x = rows.stream().mapToDouble(row -> Double.parseDouble(row.get("x"))).toArray();
    double[] y = rows.stream().mapToDouble(row -> Double.parseDouble(row.get("y"))).toArray();
    double[] unit = new double[x.length];
    Arrays.fill(unit, 1);
    double[] start = {0.5, 1.5, -1, 0.01, 0.02};
    double[] least = {-100, -100, -100, 0, 0};
    double[] most = {100, 100, 100, 1, 1};
    return new LeastSquaresFit(sets -> mgh17(sets, x), y, unit, least, most).fit(start, 1000);
  }

  private static List<double[]> mgh17(List<double[]> sets, double[] x) {
    return sets.stream().map(b -> mgh17(b, x)).toList();
  }

  private static double[] mgh17(double[] b, double[] x) {
    double[] y = new double[x.length];
    for (int i = 0; i < y.length; i++) {
      y[i] = b[0] + b[1] * FastMath.exp(-x[i] * b[3]) + b[2] * FastMath.exp(-x[i] * b[4]);
    }
    return y;
  }
}
