package org.marshlight.digester;

/**
 * Where a state goes that is carried from period to period: each number by itself, by Aitken's rule
 * on its last three values, where these come nearer to each other as a geometric series does.
 */
final class PeriodicLimit {

  /** Series that fall more slowly than this are left to themselves. */
  private static final double SLOWEST = 0.95;

  private final double[] first;
  private final double[] second;
  private int known;

  PeriodicLimit(int count) {
    first = new double[count];
    second = new double[count];
  }

  /**
   * The state from which the next period is best begun.
   *
   * @param state the state at the end of the last one, or at the very start; changed and handed
   *     back
   */
  double[] next(double[] state) {
    if (known < 2) {
      System.arraycopy(state, 0, known == 0 ? first : second, 0, state.length);
      known++;
      return state;
    }
    for (int i = 0; i < state.length; i++) {
      double before = second[i] - first[i];
      double after = state[i] - second[i];
      double ratio = after / before;
      if (ratio > 0 && ratio < SLOWEST) {
        state[i] += after * ratio / (1 - ratio);
      }
    }
    System.arraycopy(state, 0, first, 0, state.length);
    known = 1;
    return state;
  }
}
