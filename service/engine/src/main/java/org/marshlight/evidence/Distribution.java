package org.marshlight.evidence;

/** How a coefficient spreads between its low and high values. */
public enum Distribution {
  /** Not drawn. */
  FIXED,
  UNIFORM,
  TRIANGULAR,
  PERT,
  LOGNORMAL
}
