package org.marshlight.statistics;

import java.util.function.DoubleUnaryOperator;

/** A function at even steps, straight between them, for loops in which the function is dear. */
public final class EvenTable {

  private final double first;
  private final double perStep;
  private final double last;
  private final double[] values;

  private EvenTable(double first, double step, double[] values) {
    this.first = first;
    this.perStep = 1 / step;
    this.last = values.length - 1.001;
    this.values = values;
  }

  /**
   * A function's table.
   *
   * @param function the function
   * @param from first place
   * @param to last place, a whole number of steps on
   * @param step length of a step
   */
  public static EvenTable of(DoubleUnaryOperator function, double from, double to, double step) {
    double[] values = new double[(int) Math.rint((to - from) / step) + 1];
    for (int i = 0; i < values.length; i++) {
      values[i] = function.applyAsDouble(from + step * i);
    }
    return new EvenTable(from, step, values);
  }

  /** The function at a place; beyond the ends, what it is there. What is no number stays none. */
  public double at(double x) {
    double place = (x - first) * perStep;
    if (place < 0) {
      place = 0;
    } else if (place > last) {
      place = last;
    }
    int low = (int) place;
    double share = place - low;
    return values[low] * (1 - share) + values[low + 1] * share;
  }
}
