package org.marshlight.compost;

/** Whether a public rule on heat is met. */
public enum Hygiene {
  /** Met throughout the range. */
  MET,
  /** Met in part of the range only. */
  DOUBTFUL,
  NOT_MET
}
