package org.marshlight.decision;

/**
 * What one thing gives off in a year.
 *
 * @param code stable name; its sentence says what it is
 * @param carbonDioxideKg fossil carbon dioxide
 * @param methaneKg methane
 * @param nitrousOxideKg nitrous oxide
 */
record Gases(String code, double carbonDioxideKg, double methaneKg, double nitrousOxideKg) {

  static Gases carbonDioxide(String code, double kg) {
    return new Gases(code, kg, 0, 0);
  }

  static Gases methane(String code, double kg) {
    return new Gases(code, 0, kg, 0);
  }

  static Gases nitrousOxide(String code, double kg) {
    return new Gases(code, 0, 0, kg);
  }

  boolean none() {
    return carbonDioxideKg == 0 && methaneKg == 0 && nitrousOxideKg == 0;
  }

  /** What it weighs. */
  GreenhouseGasEstimate.Weight weight(WarmingCoefficients c) {
    return new GreenhouseGasEstimate.Weight(
        Warming.equivalentKg(
            carbonDioxideKg, methaneKg, nitrousOxideKg, c.methane100(), c.nitrousOxide100()),
        Warming.equivalentKg(
            carbonDioxideKg, methaneKg, nitrousOxideKg, c.methane20(), c.nitrousOxide20()));
  }
}
