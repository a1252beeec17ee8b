package org.marshlight.digester;

/**
 * Bounds for the hour loop. They differ from those of the language only for what is not a number
 * and for the sign of nought, and are branches that a processor foresees, where those are a chain
 * of blends.
 */
final class HourLoop {

  private HourLoop() {}

  /** The lesser of two numbers. */
  static double least(double one, double other) {
    return other < one ? other : one;
  }

  /** The greater of two numbers. */
  static double greatest(double one, double other) {
    return other > one ? other : one;
  }

  /** A place in a table, held to its ends. */
  static double held(double place, double last) {
    if (place < 0) {
      return 0;
    }
    return place > last ? last : place;
  }
}
