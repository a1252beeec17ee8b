/**
 * What the engine knows and why: the formula book, the coefficient book, the catalogues and the
 * sources of all three.
 *
 * <p>Uses {@code contract} only.
 */
package org.marshlight.evidence;
