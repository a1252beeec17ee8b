package org.marshlight.wetland;

/** What the beds' outflow is for. */
public enum WaterUse {
  /** Below-ground irrigation of trees and crops that are not eaten raw. */
  IRRIGATION,
  /** Soakage into a soil absorption area. */
  SOIL_ABSORPTION,
  /** Release to a stream or ditch, where a permit allows it. */
  SURFACE_DISCHARGE
}
