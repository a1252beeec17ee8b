package org.marshlight.http.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A scale with round ticks.
 *
 * @param low lower end
 * @param high upper end
 * @param ticks values that are marked
 */
record Scale(double low, double high, List<Double> ticks) {

  private static final int MOST_TICKS = 6;
  private static final double[] ROUND = {1, 2, 2.5, 5, 10};

  /** A linear scale that holds two values. */
  static Scale over(double least, double most) {
    double low = least == most ? least - 1 : least;
    double high = least == most ? most + 1 : most;
    double step = step((high - low) / MOST_TICKS);
    double first = Math.floor(low / step) * step;
    double last = Math.ceil(high / step) * step;
    List<Double> ticks = new ArrayList<>();
    for (int i = 0; first + i * step < last + step / 2; i++) {
      ticks.add(first + i * step);
    }
    return new Scale(first, last, List.copyOf(ticks));
  }

  /** A scale of powers of ten; its ends and ticks are exponents. */
  static Scale ofPowers(double least, double most) {
    double low = Math.floor(Math.log10(least));
    double high = Math.max(low + 1, Math.ceil(Math.log10(most)));
    List<Double> ticks = new ArrayList<>();
    for (double power = low; power <= high; power++) {
      ticks.add(power);
    }
    return new Scale(low, high, List.copyOf(ticks));
  }

  /** Share of the way from the lower end to the upper. */
  double share(double value) {
    return (value - low) / (high - low);
  }

  private static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double round : ROUND) {
      if (round * power >= least * (1 - 1e-9)) {
        return round * power;
      }
    }
    return 10 * power;
  }
}
