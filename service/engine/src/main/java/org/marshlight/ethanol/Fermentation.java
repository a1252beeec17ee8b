package org.marshlight.ethanol;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;

/**
 * Starch to glucose to ethanol: (C6H10O5)n + n H2O gives n C6H12O6, and C6H12O6 gives 2 C2H5OH + 2
 * CO2. Every amount of matter here has the elements and the oxygen demand of its formula.
 */
public final class Fermentation {

  /** Molar mass of a glucose unit of starch, kg/kmol. */
  public static final double STARCH =
      6 * Stoichiometry.CARBON + 10 * Stoichiometry.HYDROGEN + 5 * Stoichiometry.OXYGEN;

  /** Molar mass of glucose, kg/kmol. */
  public static final double GLUCOSE = STARCH + Alcoholometry.WATER;

  private static final Matter KG_OF_STARCH = compound(6, 10, 5);
  private static final Matter KG_OF_GLUCOSE = compound(6, 12, 6);
  private static final Matter KG_OF_ETHANOL = compound(2, 6, 1);

  private Fermentation() {}

  /** Glucose from starch. */
  @Formula(
      id = "ethanol.glucose-of-starch",
      symbol = "G",
      expression = "S r M_G / M_S",
      unit = "kg",
      meaning = "Glucose from the starch that is released and taken apart.",
      source = "stoichiometry")
  public static double glucoseKg(
      @Argument(symbol = "S", unit = "kg", min = 0, max = 1e9) double starchKg,
      @Argument(symbol = "r", unit = "1", min = 0, max = 1) double release) {
    return starchKg * release * GLUCOSE / STARCH;
  }

  /** Ethanol from glucose. */
  @Formula(
      id = "ethanol.ethanol-of-glucose",
      symbol = "E",
      expression = "2 G f M_E / M_G",
      unit = "kg",
      meaning = "Ethanol from the share of the glucose that ferments to it.",
      source = "stoichiometry")
  public static double ethanolKg(
      @Argument(symbol = "G", unit = "kg", min = 0, max = 1e9) double glucoseKg,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1) double fermentation) {
    return glucoseKg * fermentation * 2 * Alcoholometry.ETHANOL / GLUCOSE;
  }

  /** Carbon dioxide that is set free with ethanol. */
  @Formula(
      id = "ethanol.carbon-dioxide-of-ethanol",
      symbol = "CO2",
      expression = "E M_CO2 / M_E",
      unit = "kg",
      meaning = "Carbon dioxide set free with an amount of ethanol.",
      source = "stoichiometry")
  public static double carbonDioxideKg(
      @Argument(symbol = "E", unit = "kg", min = 0, max = 1e9) double ethanolKg) {
    return ethanolKg * Stoichiometry.CARBON_DIOXIDE / Alcoholometry.ETHANOL;
  }

  /** Pure ethanol from starch through every step. */
  @Formula(
      id = "ethanol.litres-of-starch",
      symbol = "V",
      expression = "1000 S r f d 2 M_E / (M_S rho_E)",
      unit = "L",
      meaning = "Pure ethanol at 20 Cel from starch, with the share kept at each step.",
      source = "stoichiometry")
  public static double litresOfStarch(
      @Argument(symbol = "S", unit = "kg", min = 0, max = 1e9) double starchKg,
      @Argument(symbol = "r", unit = "1", min = 0, max = 1) double release,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1) double fermentation,
      @Argument(symbol = "d", unit = "1", min = 0, max = 1) double recovery) {
    return litres(ethanolKg(glucoseKg(starchKg, release), fermentation) * recovery);
  }

  /** Strength of a beer. */
  @Formula(
      id = "ethanol.beer-strength",
      symbol = "q_b",
      expression = "volume fraction of E / (E + W)",
      unit = "1",
      meaning = "Strength by volume of the liquid of a beer, solids left out.",
      source = "oiml-r22",
      equation = "definition of strength by volume")
  public static double beerStrength(
      @Argument(symbol = "E", unit = "kg", min = 0, max = 1e9) double ethanolKg,
      @Argument(symbol = "W", unit = "kg", min = 0.000001, max = 1e9) double waterKg) {
    return Alcoholometry.volumeFraction(ethanolKg / (ethanolKg + waterKg));
  }

  /** Ethanol in a beer of given strength. */
  @Formula(
      id = "ethanol.ethanol-of-strength",
      symbol = "E",
      expression = "W p / (1 - p), p the mass fraction of q",
      unit = "kg",
      meaning = "Ethanol that brings an amount of water to a strength by volume.",
      source = "oiml-r22",
      equation = "definition of strength by volume, inverted")
  public static double ethanolOfStrengthKg(
      @Argument(symbol = "W", unit = "kg", min = 0, max = 1e9) double waterKg,
      @Argument(symbol = "q", unit = "1", min = 0, max = 0.95) double volumeFraction) {
    double massFraction = Alcoholometry.massFraction(volumeFraction);
    return waterKg * massFraction / (1 - massFraction);
  }

  /** Water bound when starch is taken apart, kg. */
  static double hydrolysisWaterKg(double starchKg) {
    return starchKg * Alcoholometry.WATER / STARCH;
  }

  /** Volume of pure ethanol at 20 Cel, L. */
  static double litres(double ethanolKg) {
    return ethanolKg / Alcoholometry.PURE_DENSITY_KG_M3 * 1000;
  }

  static Matter starch(double kg) {
    return KG_OF_STARCH.times(kg);
  }

  static Matter glucose(double kg) {
    return KG_OF_GLUCOSE.times(kg);
  }

  static Matter ethanol(double kg) {
    return KG_OF_ETHANOL.times(kg);
  }

  /** A kilogram of C_n H_a O_b. */
  private static Matter compound(int carbon, int hydrogen, int oxygen) {
    double molarMass =
        carbon * Stoichiometry.CARBON
            + hydrogen * Stoichiometry.HYDROGEN
            + oxygen * Stoichiometry.OXYGEN;
    return new Matter(
        0,
        1,
        0,
        Stoichiometry.theoreticalCodKgKg(carbon, hydrogen, oxygen, 0),
        carbon * Stoichiometry.CARBON / molarMass,
        0,
        0,
        0,
        0,
        0,
        0);
  }
}
