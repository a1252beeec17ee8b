package org.marshlight.digester;

/**
 * What lies between the lid and the weather. Before each step it is made ready from the
 * temperatures of the step before; afterwards it finds its own temperatures and books the heat that
 * passed. What the hour loop asks is kept in fields, so that asking costs nothing.
 */
abstract class Top {

  /** Heat from lid to environment for each kelvin, W/K. */
  double conductanceWK;

  /** Temperature of the environment that the conductance leads to, Cel. */
  double environmentC;

  /** Heat from the lid through back and sides to the air for each kelvin, W/K. */
  double sideConductanceWK;

  /** Sun taken up by the lid itself, W. */
  double lidSunW;

  /** Temperature of the surface that meets the weather, Cel. */
  double surfaceC;

  /**
   * Makes ready for a step.
   *
   * @param hour hour of the year
   * @param lidC temperature of the lid at the end of the step before
   */
  abstract void prepare(int hour, double lidC);

  /**
   * Finds its temperatures at the end of a step.
   *
   * @param lidC temperature of the lid at its end
   */
  abstract void settle(double lidC);

  /**
   * Books a step that it has settled.
   *
   * @param lidC temperature of the lid at its end
   * @param month month of the step
   */
  abstract void book(double lidC, int month, HeatLedger ledger);
}
