/**
 * The engine's entry: a plan in, an answer out that never comes without its cautions.
 *
 * @see org.marshlight.Marshlight
 */
package org.marshlight;
