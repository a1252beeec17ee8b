/**
 * Numerical methods of studies, which know nothing of plans: distributions, points of a
 * low-discrepancy sequence, percentiles, sensitivity indices and least squares.
 *
 * <p>Uses {@code contract} and {@code evidence} only.
 */
package org.marshlight.statistics;
