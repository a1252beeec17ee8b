package org.marshlight.digester;

/** What becomes of gas that the store cannot hold. */
public enum GasSurplus {
  FLARE,
  VENT
}
