package org.marshlight.statistics;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.util.FastMath;

/** How an uncertain quantity spreads. */
public sealed interface Spread {

  /**
   * Value below which the quantity lies with a probability.
   *
   * @param p probability, above 0 and below 1
   */
  double quantile(double p);

  /** Probability that the quantity lies below a value. */
  double cumulative(double value);

  /**
   * The same spread without what lies outside of bounds; the rest keeps its proportions.
   *
   * @param least lower bound
   * @param most upper bound
   */
  default Spread within(double least, double most) {
    return new Truncated(this, least, most, cumulative(least), cumulative(most));
  }

  /** Evenly between two ends. */
  record Uniform(double least, double most) implements Spread {

    @Override
    public double quantile(double p) {
      return Quantiles.uniform(p, least, most);
    }

    @Override
    public double cumulative(double value) {
      return Math.max(0, Math.min(1, (value - least) / (most - least)));
    }
  }

  /** Most likely at the mode and less so towards two ends, in straight lines. */
  record Triangular(double least, double mode, double most) implements Spread {

    @Override
    public double quantile(double p) {
      return Quantiles.triangular(p, least, mode, most);
    }

    @Override
    public double cumulative(double value) {
      if (value <= least) {
        return 0;
      }
      if (value >= most) {
        return 1;
      }
      double width = most - least;
      return value <= mode
          ? (value - least) * (value - least) / (width * (mode - least))
          : 1 - (most - value) * (most - value) / (width * (most - mode));
    }
  }

  /** Most likely at the mode and less so towards two ends, in a smooth curve. */
  record Pert(double least, double mode, double most) implements Spread {

    @Override
    public double quantile(double p) {
      return Quantiles.pert(p, least, mode, most);
    }

    @Override
    public double cumulative(double value) {
      double width = most - least;
      return new BetaDistribution(
              null,
              1 + Quantiles.PERT_WEIGHT * (mode - least) / width,
              1 + Quantiles.PERT_WEIGHT * (most - mode) / width)
          .cumulativeProbability((value - least) / width);
    }
  }

  /** Normal. */
  record Normal(double mean, double deviation) implements Spread {

    @Override
    public double quantile(double p) {
      return Quantiles.normal(p, mean, deviation);
    }

    @Override
    public double cumulative(double value) {
      return Erf.erf(Double.NEGATIVE_INFINITY, (value - mean) / (deviation * FastMath.sqrt(2))) / 2;
    }
  }

  /**
   * Lognormal on either side of its median, with a deviation of the logarithm for each side.
   *
   * @param median median, above nought
   * @param below standard deviation of the logarithm below the median
   * @param above standard deviation of the logarithm above it
   */
  record SplitLognormal(double median, double below, double above) implements Spread {

    @Override
    public double quantile(double p) {
      return Quantiles.lognormal(p, median, p < 0.5 ? below : above);
    }

    @Override
    public double cumulative(double value) {
      if (value <= 0) {
        return 0;
      }
      double deviation = value < median ? below : above;
      return deviation == 0
          ? (value < median ? 0 : 1)
          : new Normal(0, deviation).cumulative(FastMath.log(value / median));
    }
  }

  /**
   * Part of another spread.
   *
   * @param whole the other
   * @param least lower bound
   * @param most upper bound
   * @param below probability of the whole below the lower bound
   * @param upTo probability of the whole below the upper bound
   */
  record Truncated(Spread whole, double least, double most, double below, double upTo)
      implements Spread {

    @Override
    public double quantile(double p) {
      return Math.max(least, Math.min(most, whole.quantile(below + p * (upTo - below))));
    }

    @Override
    public double cumulative(double value) {
      double within = (whole.cumulative(value) - below) / (upTo - below);
      return Math.max(0, Math.min(1, within));
    }
  }
}
