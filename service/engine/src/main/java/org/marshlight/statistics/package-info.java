/**
 * Numerical methods that know nothing of plans: limits of repeated periods and, for studies,
 * distributions, points of a low-discrepancy sequence, percentiles, sensitivity indices and least
 * squares.
 *
 * <p>Uses {@code contract} and {@code evidence} only.
 */
package org.marshlight.statistics;
