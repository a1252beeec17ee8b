package org.marshlight.feed;

/** What of the household's wastewater enters the tank. */
public enum Wastewater {
  /** Toilet water and greywater. */
  ALL,
  /** Toilet water; greywater takes its own route. */
  TOILET_ONLY
}
