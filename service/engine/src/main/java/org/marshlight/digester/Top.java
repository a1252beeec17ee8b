package org.marshlight.digester;

/**
 * What lies between the lid and the weather. Before each hour it is made ready from the
 * temperatures of the hour before; afterwards it books the heat that passed and finds its own
 * temperatures.
 */
interface Top {

  /**
   * Makes ready for an hour.
   *
   * @param hour hour of the year
   * @param month its month
   * @param lidC temperature of the lid at the end of the hour before
   */
  void prepare(int hour, int month, double lidC);

  /** Heat from lid to environment for each kelvin, W/K. */
  double conductanceWK();

  /** Temperature of the environment that the conductance leads to, Cel. */
  double environmentC();

  /** Heat from the lid through back and sides to the air for each kelvin, W/K. */
  double sideConductanceWK();

  /** Sun taken up by the lid itself, W. */
  double lidSunW();

  /**
   * Books an hour.
   *
   * @param lidC temperature of the lid at its end
   */
  void book(double lidC, HeatLedger ledger);

  /** Temperature of the surface that meets the weather, Cel. */
  double surfaceC();
}
