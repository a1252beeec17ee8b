package org.marshlight.ethanol;

/** How starch is turned to sugar. */
public enum MashRoute {
  /** Bought enzymes. */
  ENZYME,
  /** Malted grain. */
  MALT
}
