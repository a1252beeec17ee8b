package org.marshlight.digester;

/** Shape of a tank seen from above. */
public enum TankShape {
  RECTANGULAR,
  /** Upright cylinder. */
  CYLINDRICAL
}
