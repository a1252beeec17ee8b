package org.marshlight.digester;

/** What lies over the lid of a tank. */
public enum CoverKind {
  /** The lid is open to the air, under the soil of the burial depth. */
  NONE,
  /** Soil of the burial depth, planted. */
  EARTH,
  GLAZED
}
