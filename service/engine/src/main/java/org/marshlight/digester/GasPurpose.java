package org.marshlight.digester;

/** What gas can be burned for. */
public enum GasPurpose {
  COOKING,
  HOT_WATER,
  LAMP,
  ENGINE,
  /** Warms the tank with gas that the store could not hold the day before. */
  TANK_HEATING
}
