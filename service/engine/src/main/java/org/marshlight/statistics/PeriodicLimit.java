package org.marshlight.statistics;

/**
 * Where a state goes that is carried from period to period: the mixture of the last few periods
 * whose changes cancel best begins the next (Anderson's rule, from memory: D. G. Anderson, J. ACM
 * 12, 1965). For one number that is Aitken's rule for a geometric series. Where periods do not come
 * nearer to each other, or the mixture leads far away, what is known is forgotten and the period
 * goes on as it ended.
 */
public final class PeriodicLimit {

  /** Changes of the change that are mixed. */
  private static final int DEPTH = 4;

  /**
   * Share of a new direction that must not lie in those before it. A smaller one would save no
   * period and let rounding grow in the mixture until what hangs on it no longer settles.
   */
  private static final double NEW = 1e-3;

  /** How often what is known may be forgotten before a series is left to itself for good. */
  private static final int PATIENCE = 4;

  private final int count;
  private final double farthest;
  private final double[][] changeOfChange = new double[DEPTH][];
  private final double[][] changeOfEnd = new double[DEPTH][];
  private int known;
  private int forgotten;
  private double[] start;
  private double[] lastChange;
  private double[] lastEnd;

  /**
   * A state of which nothing is known yet.
   *
   * @param count its numbers, none of them negative
   * @param farthest factor by which a mixture may change a number, more than 1; beyond it, it is
   *     led too far. Periods that are straight need no bound
   */
  public PeriodicLimit(int count, double farthest) {
    this.count = count;
    this.farthest = farthest;
  }

  /**
   * The state from which the next period is best begun.
   *
   * @param end the state at the end of the last one, or at the very start; not changed
   */
  public double[] next(double[] end) {
    double[] next = end.clone();
    if (start != null) {
      double[] change = minus(end, start);
      if (lastChange != null && forgotten < PATIENCE) {
        if (dot(change, change) < dot(lastChange, lastChange)) {
          remember(minus(change, lastChange), minus(end, lastEnd));
          mix(change, next);
        } else {
          forget();
        }
      }
      lastChange = change;
      lastEnd = end.clone();
    }
    start = next.clone();
    return next;
  }

  private void forget() {
    known = 0;
    forgotten++;
  }

  /** The newest goes first; the oldest is forgotten. */
  private void remember(double[] ofChange, double[] ofEnd) {
    known = Math.min(DEPTH, known + 1);
    for (int i = known - 1; i > 0; i--) {
      changeOfChange[i] = changeOfChange[i - 1];
      changeOfEnd[i] = changeOfEnd[i - 1];
    }
    changeOfChange[0] = ofChange;
    changeOfEnd[0] = ofEnd;
  }

  /**
   * Takes from the end what makes the change, as far as the changes known can cancel it. These are
   * made perpendicular one after the other, and their ends with them.
   *
   * @param next the end; changed where the mixture is sound
   */
  private void mix(double[] change, double[] next) {
    double[] rest = change.clone();
    double[] end = next.clone();
    double[][] directions = new double[known][];
    double[][] ends = new double[known][];
    for (int i = 0; i < known; i++) {
      double[] direction = changeOfChange[i].clone();
      double[] moved = changeOfEnd[i].clone();
      double whole = dot(direction, direction);
      for (int j = 0; j < i; j++) {
        if (directions[j] != null) {
          double share = dot(direction, directions[j]) / dot(directions[j], directions[j]);
          add(direction, directions[j], -share);
          add(moved, ends[j], -share);
        }
      }
      double own = dot(direction, direction);
      if (own > NEW * NEW * whole && own > 0) {
        directions[i] = direction;
        ends[i] = moved;
        double share = dot(rest, direction) / own;
        add(rest, direction, -share);
        add(end, moved, -share);
      }
    }
    for (int i = 0; i < count; i++) {
      if (end[i] < next[i] / farthest || end[i] > next[i] * farthest) {
        forget();
        return;
      }
    }
    System.arraycopy(end, 0, next, 0, count);
  }

  private double[] minus(double[] one, double[] other) {
    double[] difference = one.clone();
    add(difference, other, -1);
    return difference;
  }

  private void add(double[] to, double[] what, double times) {
    for (int i = 0; i < count; i++) {
      to[i] += times * what[i];
    }
  }

  private double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
