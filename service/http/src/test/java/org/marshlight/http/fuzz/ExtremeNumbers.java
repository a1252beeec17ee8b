package org.marshlight.http.fuzz;

import java.util.SplittableRandom;

/** Numbers near the bounds of their field, near zero, and now and then one between. */
final class ExtremeNumbers {

  private static final double[] TINY = {
    Double.MIN_VALUE,
    1e-320,
    Double.MIN_NORMAL,
    1e-308,
    1e-170,
    1e-155,
    1e-100,
    1e-50,
    1e-20,
    1e-12,
    9.99e-10,
    1e-9,
    1.01e-9,
    1e-8,
    1e-6,
    1e-4
  };

  private ExtremeNumbers() {}

  /** A number within bounds. */
  static double within(double low, double high, SplittableRandom random) {
    double tiny = TINY[random.nextInt(TINY.length)];
    double drawn =
        switch (random.nextInt(10)) {
          case 0, 1 -> low;
          case 2, 3 -> high;
          case 4 -> low + (high - low) * Math.pow(10, -1 - random.nextInt(12));
          case 5 -> high - (high - low) * Math.pow(10, -1 - random.nextInt(12));
          case 6 -> random.nextBoolean() ? Math.nextUp(low) : Math.nextDown(high);
          case 7 -> 0;
          case 8 -> random.nextInt(4) == 0 ? -tiny : tiny;
          default -> low + (high - low) * random.nextDouble();
        };
    return Math.max(low, Math.min(high, drawn));
  }

  /** A whole number within bounds. */
  static int wholeWithin(double low, double high, SplittableRandom random) {
    return (int)
        Math.max(
            low,
            switch (random.nextInt(4)) {
              case 0 -> low;
              case 1 -> high;
              case 2 -> Math.min(high, low + 1 + random.nextInt(3));
              default -> high - random.nextInt(2);
            });
  }

  /** A tiny number. */
  static double tiny(SplittableRandom random) {
    return TINY[random.nextInt(TINY.length)];
  }
}
