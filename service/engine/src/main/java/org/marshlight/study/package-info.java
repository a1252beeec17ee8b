/**
 * Studies round one plan: how sure its figures are, what matters, how big its parts must be, what
 * would be if. None has physics of its own; all run the same chain again and again.
 *
 * <p>Studies know nothing of JSON: variants arrive as plans, and pointers name fields of records.
 */
package org.marshlight.study;
