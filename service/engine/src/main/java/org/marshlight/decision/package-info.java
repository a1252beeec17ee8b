/**
 * Worth building? The plan run with and without each part, and the verdicts that follow; the
 * estimate that joins them with the loop's figures.
 */
package org.marshlight.decision;
