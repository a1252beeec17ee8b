package org.marshlight.digester;

/**
 * Heat that a mass holds, over the length of a step.
 *
 * @param wattsPerK joules for each kelvin over the seconds of a step
 */
record HeldHeat(double wattsPerK) {

  HeldHeat half() {
    return new HeldHeat(wattsPerK / 2);
  }
}
