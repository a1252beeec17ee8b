package org.marshlight.digester;

/**
 * The liquor of a tank in the heat balance. Before each step it is reduced to one equation for the
 * temperature of its surface; afterwards it books what passed and finds what lies below. What the
 * hour loop asks is kept in fields, so that asking costs nothing.
 */
abstract class Liquor {

  /** Sum of what holds the surface's temperature, W/K. */
  double sumWK;

  /** What drives it, W. */
  double driveW;

  /** Temperature of the surface, Cel. */
  double surfaceC;

  /** Mean temperature, Cel. */
  double meanC;

  /**
   * Takes the length of the steps that follow.
   *
   * @param hours length of a step
   */
  abstract void stepOf(double hours);

  /**
   * Makes ready for a step.
   *
   * @param month month of the step
   * @param groundBaseW loss to the ground that does not hang on the present temperature
   * @param groundFactor loss to the ground over that of a tank that has stood for years
   */
  abstract void prepare(int month, double groundBaseW, double groundFactor);

  /**
   * Books a step before it is settled.
   *
   * @param newSurfaceC temperature of the surface at its end
   */
  abstract void book(double newSurfaceC, HeatLedger ledger);

  /**
   * Takes the surface's new temperature.
   *
   * @param newSurfaceC temperature of the surface at the end of the step
   */
  abstract void settle(double newSurfaceC);

  /** Starts with the same temperature throughout. */
  abstract void start(double temperatureC);

  /** Warms all of it, or cools it if below nought. */
  abstract void shift(double kelvin);
}
