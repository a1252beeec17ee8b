package org.marshlight.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.Distribution;

/**
 * Spreads that fit a central value with a tenth and a ninetieth percentile. The central value is
 * the mode of triangular and PERT spreads, the median of lognormal ones, and has no say in uniform
 * ones.
 */
public final class SpreadFit {

  /** Probability of the low value, and of more than the high one. */
  public static final double TAIL = 0.1;

  private static final double ACCURACY = 1e-12;
  private static final int MOST_STEPS = 200;

  /** Place of the mode where the tenth percentile of a PERT spread is the mode itself. */
  private static final double PERT_MODE_AT_TAIL = pertPlace(0);

  private SpreadFit() {}

  /**
   * The spread of a coefficient, held to what a plan may set.
   *
   * @param row the coefficient; its low and high value must differ
   */
  public static Spread of(CoefficientRow row) {
    return of(row.distribution(), row.low(), row.value(), row.high())
        .within(row.least(), row.most());
  }

  /**
   * A spread with a tenth and a ninetieth percentile.
   *
   * @param distribution its form; {@link Distribution#FIXED} has none
   * @param low tenth percentile, above nought for lognormal spreads
   * @param central central value, from low to high
   * @param high ninetieth percentile, above low
   */
  public static Spread of(Distribution distribution, double low, double central, double high) {
    if (!(low <= central && central <= high && low < high)) {
      throw new IllegalArgumentException("no spread: " + low + ", " + central + ", " + high);
    }
    return switch (distribution) {
      case UNIFORM -> uniform(low, high);
      case TRIANGULAR -> triangular(low, central, high);
      case PERT -> pert(low, central, high);
      case LOGNORMAL ->
          new Spread.SplitLognormal(
              central,
              Quantiles.lognormalDeviation(TAIL, central, low),
              Quantiles.lognormalDeviation(1 - TAIL, central, high));
      case FIXED -> throw new IllegalArgumentException("a fixed value does not spread");
    };
  }

  private static Spread uniform(double low, double high) {
    double beyond = (high - low) * TAIL / (1 - 2 * TAIL);
    return new Spread.Uniform(low - beyond, high + beyond);
  }

  /**
   * With s the mode's place between the ends, the percentiles lie sqrt(0.1 s) and sqrt(0.1 (1 - s))
   * of the width from them; s follows from where the central value stands between the percentiles.
   */
  private static Spread triangular(double low, double central, double high) {
    double share = (central - low) / (high - low);
    double place =
        root(s -> s - FastMath.sqrt(TAIL * s) - share * triangularSpan(s), TAIL, 1 - TAIL);
    double width = (high - low) / triangularSpan(place);
    double least = central - place * width;
    return new Spread.Triangular(least, central, least + width);
  }

  /** Distance between the percentiles over that between the ends. */
  private static double triangularSpan(double place) {
    return 1 - FastMath.sqrt(TAIL * place) - FastMath.sqrt(TAIL * (1 - place));
  }

  private static Spread pert(double low, double central, double high) {
    double place = pertPlace((central - low) / (high - low));
    double width = (high - low) / (pertPercentile(1 - TAIL, place) - pertPercentile(TAIL, place));
    double least = central - place * width;
    return new Spread.Pert(least, central, least + width);
  }

  /** The mode's place between the ends, from its place between the percentiles. */
  private static double pertPlace(double share) {
    double low = share == 0 ? 0 : PERT_MODE_AT_TAIL;
    return root(
        s -> {
          double tenth = pertPercentile(TAIL, s);
          return s - tenth - share * (pertPercentile(1 - TAIL, s) - tenth);
        },
        low,
        share == 0 ? 0.5 : 1 - PERT_MODE_AT_TAIL);
  }

  private static double pertPercentile(double p, double place) {
    return Quantiles.pert(p, 0, place, 1);
  }

  private static double root(DoubleUnaryOperator function, double low, double high) {
    if (function.applyAsDouble(low) >= 0) {
      return low;
    }
    if (function.applyAsDouble(high) <= 0) {
      return high;
    }
    return new BrentSolver(ACCURACY).solve(MOST_STEPS, function::applyAsDouble, low, high);
  }
}
