package org.marshlight.digester;

/**
 * The liquor of a tank in the heat balance. Before each step it is reduced to one equation for the
 * temperature of its surface; afterwards it finds what lies below and books what passed.
 */
interface Liquor {

  /**
   * Makes ready for a step.
   *
   * @param month month of the step
   * @param groundBaseW loss to the ground that does not hang on the present temperature
   * @param groundFactor loss to the ground over that of a tank that has stood for years
   */
  void prepare(int month, double groundBaseW, double groundFactor);

  /** Sum of what holds the surface's temperature, W/K. */
  double sumWK();

  /** What drives it, W. */
  double driveW();

  /** Takes the surface's new temperature. */
  void settle(double surfaceC, HeatLedger ledger);

  /** Starts with the same temperature throughout. */
  void start(double temperatureC);

  /** Temperature of the surface, Cel. */
  double surfaceC();

  /** Mean temperature, Cel. */
  double meanC();
}
