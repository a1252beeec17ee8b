package org.marshlight.ethanol;

/** Kinds of still. */
public enum StillKind {
  /** A batch pot without plates. */
  POT,
  /** A column with plates and reflux. */
  COLUMN
}
