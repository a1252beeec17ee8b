package org.marshlight.wetland;

/** How water stands in a bed. */
public enum BedKind {
  FREE_WATER_SURFACE,
  HORIZONTAL_SUBSURFACE
}
