package org.marshlight.digester;

/**
 * Cube root for the hour loop, where it is the dearest part of two convection correlations: a first
 * guess from the exponent, and twice Halley's rule. Within 1e-14 of the true value, and the same on
 * every machine, at half the time of the libraries' correctly rounded roots.
 */
final class CubeRoot {

  /** Two thirds of the exponent's bias, less what makes the guess's greatest error least. */
  private static final long GUESS = 0x2A9F_7893_782D_A1CEL;

  /** From here to its reciprocal no step of the rule under- or overflows. */
  static final double LEAST = 1e-200;

  private CubeRoot() {}

  /**
   * The cube root.
   *
   * @param x from {@link #LEAST} to its reciprocal
   */
  static double of(double x) {
    double guess = Double.longBitsToDouble(Double.doubleToRawLongBits(x) / 3 + GUESS);
    return halley(halley(guess, x), x);
  }

  private static double halley(double root, double x) {
    double cube = root * root * root;
    return root * (cube + x + x) / (cube + cube + x);
  }
}
