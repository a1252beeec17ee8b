package org.marshlight.ethanol;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Roots by Brent's method, always to the same tolerance. */
final class Root {

  private static final double RELATIVE = 1e-13;
  private static final double ABSOLUTE = 1e-12;
  private static final double OF_VALUE = 1e-14;
  private static final int MOST_STEPS = 300;

  private Root() {}

  /**
   * The argument at which a function is nought.
   *
   * <p>A solver keeps the state of its search, so each search has its own.
   *
   * @param low an argument at which the function has one sign
   * @param high an argument at which it has the other
   */
  static double of(UnivariateFunction function, double low, double high) {
    return new BrentSolver(RELATIVE, ABSOLUTE, OF_VALUE).solve(MOST_STEPS, function, low, high);
  }
}
