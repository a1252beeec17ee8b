/** Fuel alcohol: saccharification, fermentation, equilibrium, distillation, alcoholometry. */
package org.marshlight.ethanol;
