package org.marshlight.digester;

/** What gas can be burned for. */
public enum GasPurpose {
  COOKING,
  HOT_WATER,
  LAMP,
  ENGINE
}
