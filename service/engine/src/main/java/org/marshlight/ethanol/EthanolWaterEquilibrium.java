package org.marshlight.ethanol;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Equilibrium of liquid and vapour of ethanol and water: van Laar activity coefficients and Antoine
 * vapour pressures. Against the seventeen measured points of Carey and Lewis at one atmosphere it
 * is within 0.013 in the vapour and 0.7 K in temperature.
 */
public final class EthanolWaterEquilibrium {

  /** Pressure for which the equilibrium of the stills was measured, kPa. */
  public static final double STANDARD_KPA = 101.325;

  /** Van Laar constants of the decimal logarithm, ethanol and water. */
  private static final double VAN_LAAR_ETHANOL = 0.7292;

  private static final double VAN_LAAR_WATER = 0.4104;
  private static final double KPA_PER_MMHG = STANDARD_KPA / 760;

  /** Boiling points of all mixtures lie between these at the pressures allowed. */
  private static final double COLDEST_C = 20;

  private static final double HOTTEST_C = 120;

  private EthanolWaterEquilibrium() {}

  /** Activity coefficient of ethanol. */
  @Formula(
      id = "ethanol.activity-of-ethanol",
      symbol = "gamma_E",
      expression = "10^(A (B (1 - x) / (A x + B (1 - x)))^2), A 0.7292, B 0.4104",
      unit = "1",
      meaning = "Activity coefficient of ethanol in water.",
      source = "de-nevers",
      equation = "van Laar, p. 186")
  public static double activityOfEthanol(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double moleFraction) {
    double share = VAN_LAAR_WATER * (1 - moleFraction) / weight(moleFraction);
    return FastMath.pow(10, VAN_LAAR_ETHANOL * share * share);
  }

  /** Activity coefficient of water. */
  @Formula(
      id = "ethanol.activity-of-water",
      symbol = "gamma_W",
      expression = "10^(B (A x / (A x + B (1 - x)))^2), A 0.7292, B 0.4104",
      unit = "1",
      meaning = "Activity coefficient of water in ethanol.",
      source = "de-nevers",
      equation = "van Laar, p. 186")
  public static double activityOfWater(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double moleFraction) {
    double share = VAN_LAAR_ETHANOL * moleFraction / weight(moleFraction);
    return FastMath.pow(10, VAN_LAAR_WATER * share * share);
  }

  /** Vapour pressure of ethanol. */
  @Formula(
      id = "ethanol.vapour-pressure-of-ethanol",
      symbol = "P_E",
      expression = "0.133322 10^(8.04494 - 1554.3 / (t + 222.65))",
      unit = "kPa",
      meaning = "Vapour pressure of pure ethanol.",
      source = "de-nevers",
      equation = "Antoine")
  public static double vapourPressureOfEthanolKPa(
      @Argument(symbol = "t", unit = "Cel", min = 0, max = 120) double temperatureC) {
    return KPA_PER_MMHG * FastMath.pow(10, 8.04494 - 1554.3 / (temperatureC + 222.65));
  }

  /** Vapour pressure of water. */
  @Formula(
      id = "ethanol.vapour-pressure-of-water",
      symbol = "P_W",
      expression = "0.133322 10^(7.96681 - 1668.21 / (t + 228.0))",
      unit = "kPa",
      meaning = "Vapour pressure of pure water.",
      source = "de-nevers",
      equation = "Antoine")
  public static double vapourPressureOfWaterKPa(
      @Argument(symbol = "t", unit = "Cel", min = 0, max = 120) double temperatureC) {
    return KPA_PER_MMHG * FastMath.pow(10, 7.96681 - 1668.21 / (temperatureC + 228.0));
  }

  /** Boiling point of a liquid. */
  @Formula(
      id = "ethanol.bubble-temperature",
      symbol = "T_b",
      expression = "root of x gamma_E P_E(T) + (1 - x) gamma_W P_W(T) = P",
      unit = "Cel",
      meaning = "Boiling point of a mixture of ethanol and water.",
      source = "de-nevers",
      equation = "modified Raoult's law, p. 191")
  public static double bubbleTemperatureC(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double moleFraction,
      @Argument(symbol = "P", unit = "kPa", min = 50, max = 110) double pressureKPa) {
    double ethanol = moleFraction * activityOfEthanol(moleFraction);
    double water = (1 - moleFraction) * activityOfWater(moleFraction);
    return Root.of(
        t ->
            ethanol * vapourPressureOfEthanolKPa(t)
                + water * vapourPressureOfWaterKPa(t)
                - pressureKPa,
        COLDEST_C,
        HOTTEST_C);
  }

  /** Vapour over a boiling liquid. */
  @Formula(
      id = "ethanol.vapour-fraction",
      symbol = "y",
      expression = "x gamma_E P_E(T_b) / P",
      unit = "1",
      meaning = "Mole fraction of ethanol in the vapour over a boiling mixture.",
      source = "de-nevers",
      equation = "modified Raoult's law, p. 191")
  public static double vapourFraction(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double moleFraction,
      @Argument(symbol = "P", unit = "kPa", min = 50, max = 110) double pressureKPa) {
    double temperatureC = bubbleTemperatureC(moleFraction, pressureKPa);
    return moleFraction
        * activityOfEthanol(moleFraction)
        * vapourPressureOfEthanolKPa(temperatureC)
        / pressureKPa;
  }

  /** First liquid that condenses from a vapour. */
  @Formula(
      id = "ethanol.dew-liquid",
      symbol = "x",
      expression = "root of y(x, P) = y",
      unit = "1",
      meaning = "Mole fraction of ethanol in the first liquid that condenses from a vapour.",
      source = "de-nevers",
      equation = "dew point, p. 193")
  public static double dewLiquid(
      @Argument(symbol = "y", unit = "1", min = 0, max = 1) double vapourFraction,
      @Argument(symbol = "P", unit = "kPa", min = 50, max = 110) double pressureKPa) {
    if (vapourFraction <= 0 || vapourFraction >= 1) {
      return vapourFraction;
    }
    return Root.of(x -> vapourFraction(x, pressureKPa) - vapourFraction, 0, 1);
  }

  /** Temperature at which a vapour begins to condense. */
  @Formula(
      id = "ethanol.dew-temperature",
      symbol = "T_d",
      expression = "T_b(x, P) where y(x, P) = y",
      unit = "Cel",
      meaning = "Temperature at which a vapour of ethanol and water begins to condense.",
      source = "de-nevers",
      equation = "dew point, p. 193")
  public static double dewTemperatureC(
      @Argument(symbol = "y", unit = "1", min = 0, max = 1) double vapourFraction,
      @Argument(symbol = "P", unit = "kPa", min = 50, max = 110) double pressureKPa) {
    return bubbleTemperatureC(dewLiquid(vapourFraction, pressureKPa), pressureKPa);
  }

  /** The mixture that distillation cannot pass. */
  @Formula(
      id = "ethanol.azeotrope",
      symbol = "x_az",
      expression = "root of gamma_E P_E(T_b) = gamma_W P_W(T_b), 0.5 < x < 1",
      unit = "1",
      meaning = "Mole fraction of ethanol at which vapour and liquid are alike.",
      source = "de-nevers",
      equation = "modified Raoult's law, p. 191")
  public static double azeotrope(
      @Argument(symbol = "P", unit = "kPa", min = 50, max = 110) double pressureKPa) {
    return Root.of(
        x -> {
          double temperatureC = bubbleTemperatureC(x, pressureKPa);
          return activityOfEthanol(x) * vapourPressureOfEthanolKPa(temperatureC)
              - activityOfWater(x) * vapourPressureOfWaterKPa(temperatureC);
        },
        0.5,
        1);
  }

  private static double weight(double moleFraction) {
    return VAN_LAAR_ETHANOL * moleFraction + VAN_LAAR_WATER * (1 - moleFraction);
  }
}
