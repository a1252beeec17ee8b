package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Hydrogen sulphide between liquor and gas. */
public final class Sulphide {

  private static final double KELVIN = 273.15;
  private static final double REFERENCE_K = 298.15;

  private Sulphide() {}

  /** Share of dissolved sulphide that is hydrogen sulphide and can leave as gas. */
  @Formula(
      id = "digester.hydrogen-sulphide-share",
      symbol = "f_H2S",
      expression = "1 / (1 + 10^(pH - pK_1)); pK_1 = 6.98 + 1149 (1/T - 1/298.15)",
      unit = "1",
      meaning = "Share of dissolved sulphide that is not ionised.",
      source = "sulphide-chemistry")
  public static double hydrogenSulphideShare(
      @Argument(symbol = "t", unit = "Cel", min = -5, max = 80) double temperatureC,
      @Argument(symbol = "pH", unit = "[pH]", min = 3, max = 12) double acidity) {
    double pk1 = 6.98 + 1149 * (1 / (temperatureC + KELVIN) - 1 / REFERENCE_K);
    return 1 / (1 + FastMath.pow(10, acidity - pk1));
  }

  /** Partial pressure at equilibrium with what is dissolved. */
  @Formula(
      id = "digester.hydrogen-sulphide-pressure",
      symbol = "p_H2S",
      expression = "c / H; H = H_0 exp(C (1/T - 1/298.15)), H_0 = 1.0e-3 mol m-3 Pa-1, C = 2100 K",
      unit = "Pa",
      meaning = "Partial pressure of hydrogen sulphide over water that holds it.",
      source = "sulphide-chemistry")
  public static double partialPressurePa(
      @Argument(symbol = "t", unit = "Cel", min = -5, max = 80) double temperatureC,
      @Argument(symbol = "c", unit = "mol/m3", min = 0, max = 300) double dissolvedMolM3) {
    double kelvin = temperatureC + KELVIN;
    return dissolvedMolM3 / (1.0e-3 * FastMath.exp(2100 * (1 / kelvin - 1 / REFERENCE_K)));
  }
}
