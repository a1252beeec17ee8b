package org.marshlight.statistics;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Quantile functions of the distributions from which coefficients are drawn. */
public final class Quantiles {

  /** Weight of the mode in the mean of a PERT distribution. */
  static final double PERT_WEIGHT = 4;

  private static final double ROOT_OF_TWO = FastMath.sqrt(2);
  private static final double BETA_ACCURACY = 1e-12;

  private Quantiles() {}

  /**
   * Quantile of a uniform distribution.
   *
   * @param p probability, 0 to 1
   * @param least lower end
   * @param most upper end
   */
  @Formula(
      id = "statistics.uniform-quantile",
      symbol = "x_p",
      expression = "a + p (b - a)",
      unit = "1",
      meaning = "Value below which a uniform quantity lies with a probability.",
      source = "nist-handbook",
      equation = "1.3.6.6.2")
  public static double uniform(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double p,
      @Argument(symbol = "a", unit = "1", min = -1e15, max = 1e15) double least,
      @Argument(symbol = "b", unit = "1", min = -1e15, max = 1e15) double most) {
    return least + p * (most - least);
  }

  /**
   * Quantile of a triangular distribution.
   *
   * @param p probability, 0 to 1
   * @param least lower end
   * @param mode most likely value, between the ends
   * @param most upper end, above the lower
   * @return the value; NaN if the three are out of order
   */
  @Formula(
      id = "statistics.triangular-quantile",
      symbol = "x_p",
      expression =
          "a + sqrt(p (b - a) (c - a)) for p <= (c - a)/(b - a), else b - sqrt((1 - p)(b - a)(b -"
              + " c))",
      unit = "1",
      meaning = "Value below which a triangular quantity lies with a probability.",
      source = "evans-distributions")
  public static double triangular(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double p,
      @Argument(symbol = "a", unit = "1", min = -1e15, max = 1e15) double least,
      @Argument(symbol = "c", unit = "1", min = -1e15, max = 1e15) double mode,
      @Argument(symbol = "b", unit = "1", min = -1e15, max = 1e15) double most) {
    if (!inOrder(least, mode, most)) {
      return Double.NaN;
    }
    double width = most - least;
    return p * width <= mode - least
        ? least + FastMath.sqrt(p * width * (mode - least))
        : most - FastMath.sqrt((1 - p) * width * (most - mode));
  }

  /**
   * Quantile of a PERT distribution: a beta distribution whose mean is (a + 4 c + b)/6.
   *
   * @param p probability, 0 to 1
   * @param least lower end
   * @param mode most likely value, between the ends
   * @param most upper end, above the lower
   * @return the value; NaN if the three are out of order
   */
  @Formula(
      id = "statistics.pert-quantile",
      symbol = "x_p",
      expression = "a + (b - a) B^-1(p; 1 + 4 (c - a)/(b - a), 1 + 4 (b - c)/(b - a))",
      unit = "1",
      meaning = "Value below which a PERT quantity lies with a probability.",
      source = "malcolm-1959")
  public static double pert(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double p,
      @Argument(symbol = "a", unit = "1", min = -1e15, max = 1e15) double least,
      @Argument(symbol = "c", unit = "1", min = -1e15, max = 1e15) double mode,
      @Argument(symbol = "b", unit = "1", min = -1e15, max = 1e15) double most) {
    if (!inOrder(least, mode, most)) {
      return Double.NaN;
    }
    double width = most - least;
    BetaDistribution beta =
        new BetaDistribution(
            null,
            1 + PERT_WEIGHT * (mode - least) / width,
            1 + PERT_WEIGHT * (most - mode) / width,
            BETA_ACCURACY);
    return least + width * beta.inverseCumulativeProbability(p);
  }

  /** Whether a mode lies between two ends that differ. */
  private static boolean inOrder(double least, double mode, double most) {
    return least < most && least <= mode && mode <= most;
  }

  /**
   * Quantile of a normal distribution.
   *
   * @param p probability, above 0 and below 1
   * @param mean mean
   * @param deviation standard deviation
   */
  @Formula(
      id = "statistics.normal-quantile",
      symbol = "x_p",
      expression = "mu + sigma sqrt(2) erf^-1(2 p - 1)",
      unit = "1",
      meaning = "Value below which a normal quantity lies with a probability.",
      source = "nist-handbook",
      equation = "1.3.6.6.1")
  public static double normal(
      @Argument(symbol = "p", unit = "1", min = 1e-300, max = 0.9999999999999999) double p,
      @Argument(symbol = "mu", unit = "1", min = -1e15, max = 1e15) double mean,
      @Argument(symbol = "sigma", unit = "1", min = 0, max = 1e15) double deviation) {
    return mean + deviation * ROOT_OF_TWO * Erf.erfInv(2 * p - 1);
  }

  /**
   * Quantile of a lognormal distribution.
   *
   * @param p probability, above 0 and below 1
   * @param median median
   * @param deviation standard deviation of the natural logarithm
   */
  @Formula(
      id = "statistics.lognormal-quantile",
      symbol = "x_p",
      expression = "m exp(sigma z_p)",
      unit = "1",
      meaning = "Value below which a lognormal quantity lies with a probability.",
      source = "nist-handbook",
      equation = "1.3.6.6.9")
  public static double lognormal(
      @Argument(symbol = "p", unit = "1", min = 1e-300, max = 0.9999999999999999) double p,
      @Argument(symbol = "m", unit = "1", min = 0, max = 1e15) double median,
      @Argument(symbol = "sigma", unit = "1", min = 0, max = 100) double deviation) {
    return median * FastMath.exp(normal(p, 0, deviation));
  }

  /**
   * Standard deviation of the logarithm of a lognormal quantity of which one percentile is known
   * beside the median.
   *
   * @param p probability of the percentile, not one half
   * @param median median
   * @param percentile the percentile
   */
  @Formula(
      id = "statistics.lognormal-deviation",
      symbol = "sigma",
      expression = "ln(x_p/m)/z_p",
      unit = "1",
      meaning = "Standard deviation of the logarithm that goes with a median and a percentile.",
      source = "nist-handbook",
      equation = "1.3.6.6.9")
  public static double lognormalDeviation(
      @Argument(symbol = "p", unit = "1", min = 1e-300, max = 0.9999999999999999) double p,
      @Argument(symbol = "m", unit = "1", min = 1e-300, max = 1e15) double median,
      @Argument(symbol = "x_p", unit = "1", min = 1e-300, max = 1e15) double percentile) {
    return FastMath.log(percentile / median) / normal(p, 0, 1);
  }
}
