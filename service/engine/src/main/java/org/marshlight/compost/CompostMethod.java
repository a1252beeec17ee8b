package org.marshlight.compost;

/** How a heap is run. */
public enum CompostMethod {
  /** Built at once and turned. */
  TURNED_HEAP,
  /** Built at once and left. */
  STATIC_HEAP,
  /** Added to bit by bit, in a bin. */
  BIN
}
