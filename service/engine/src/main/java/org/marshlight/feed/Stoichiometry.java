package org.marshlight.feed;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Masses that follow from chemical formulas alone. Atomic masses: IUPAC conventional values. */
public final class Stoichiometry {

  /** Atomic masses, kg/kmol. */
  public static final double CARBON = 12.011;

  public static final double HYDROGEN = 1.008;
  public static final double OXYGEN = 15.999;
  public static final double NITROGEN = 14.007;
  public static final double SULFUR = 32.06;

  /** Molar mass of methane, kg/kmol. */
  public static final double METHANE = CARBON + 4 * HYDROGEN;

  /** Molar mass of carbon dioxide, kg/kmol. */
  public static final double CARBON_DIOXIDE = CARBON + 2 * OXYGEN;

  /** Molar volume of an ideal gas at 0 Cel and 101.325 kPa, m3/kmol (CODATA). */
  public static final double MOLAR_VOLUME_M3_KMOL = 22.413_969_54;

  /** COD of methane, kg/kg: CH4 + 2 O2. */
  public static final double METHANE_COD = 4 * OXYGEN / METHANE;

  /** Carbon of methane, kg/kg. */
  public static final double METHANE_CARBON = CARBON / METHANE;

  /** Oxygen taken up to turn ammonium nitrogen into nitrate, kg/kg: NH3 + 2 O2. */
  public static final double NITRIFICATION_OXYGEN = 4 * OXYGEN / NITROGEN;

  /** COD taken by nitrate nitrogen reduced to nitrogen gas, kg/kg: 5/4 O2 for each N. */
  public static final double DENITRIFICATION_COD = 2.5 * OXYGEN / NITROGEN;

  private Stoichiometry() {}

  /** Methane from COD that is turned to methane altogether. */
  @Formula(
      id = "feed.methane-of-cod",
      symbol = "V_CH4",
      expression = "COD V_m / (4 M_O)",
      unit = "m3",
      meaning = "Dry methane at 0 Cel and 101.325 kPa that holds a given COD.",
      source = "stoichiometry")
  public static double methaneOfCodNm3(
      @Argument(symbol = "COD", unit = "kg", min = 0, max = 1e9) double codKg) {
    return codKg * MOLAR_VOLUME_M3_KMOL / (4 * OXYGEN);
  }

  /** Water set free when organic matter is taken apart, from its mass balance. */
  @Formula(
      id = "feed.water-of-reaction",
      symbol = "W",
      expression = "VS + COD - C M_CO2 / M_C - N M_NH3 / M_N",
      unit = "kg",
      meaning =
          "Water set free when organic matter of this VS, COD, carbon and nitrogen is oxidised to"
              + " carbon dioxide, ammonia and water.",
      source = "stoichiometry")
  public static double waterOfOxidationKg(
      @Argument(symbol = "VS", unit = "kg", min = -1e9, max = 1e9) double volatileSolidsKg,
      @Argument(symbol = "COD", unit = "kg", min = -1e9, max = 1e9) double codKg,
      @Argument(symbol = "C", unit = "kg", min = -1e9, max = 1e9) double carbonKg,
      @Argument(symbol = "N", unit = "kg", min = -1e9, max = 1e9) double nitrogenKg) {
    return volatileSolidsKg
        + codKg
        - carbonKg * CARBON_DIOXIDE / CARBON
        - nitrogenKg * (NITROGEN + 3 * HYDROGEN) / NITROGEN;
  }

  /** Water bound in the organic part of an amount of matter, set free by full oxidation, kg. */
  public static double boundWaterKg(Matter matter) {
    return waterOfOxidationKg(
        matter.volatileSolidsKg(),
        matter.codKg(),
        matter.organicCarbonKg(),
        matter.organicNitrogenKg());
  }

  /** Theoretical oxygen demand of a compound. */
  @Formula(
      id = "feed.theoretical-cod",
      symbol = "COD_th",
      expression = "M_O2 (n + a/4 - b/2 - 3c/4) / (12.011 n + 1.008 a + 15.999 b + 14.007 c)",
      unit = "kg/kg",
      meaning = "COD of a compound C_n H_a O_b N_c against ammonia.",
      source = "stoichiometry")
  public static double theoreticalCodKgKg(
      @Argument(symbol = "n", unit = "1", min = 0.001, max = 1000) double carbon,
      @Argument(symbol = "a", unit = "1", min = 0, max = 2000) double hydrogen,
      @Argument(symbol = "b", unit = "1", min = 0, max = 1000) double oxygen,
      @Argument(symbol = "c", unit = "1", min = 0, max = 1000) double nitrogen) {
    return 2
        * OXYGEN
        * (carbon + hydrogen / 4 - oxygen / 2 - 0.75 * nitrogen)
        / molarMass(carbon, hydrogen, oxygen, nitrogen);
  }

  /** Methane that a compound can give at most. */
  @Formula(
      id = "feed.buswell-methane",
      symbol = "B_th",
      expression = "V_m (n/2 + a/8 - b/4 - 3c/8) / (12.011 n + 1.008 a + 15.999 b + 14.007 c)",
      unit = "m3/kg",
      meaning = "Methane at 0 Cel, 101.325 kPa from a compound C_n H_a O_b N_c taken apart whole.",
      source = "buswell-1952",
      equation = "extended with nitrogen")
  public static double buswellMethaneNm3Kg(
      @Argument(symbol = "n", unit = "1", min = 0.001, max = 1000) double carbon,
      @Argument(symbol = "a", unit = "1", min = 0, max = 2000) double hydrogen,
      @Argument(symbol = "b", unit = "1", min = 0, max = 1000) double oxygen,
      @Argument(symbol = "c", unit = "1", min = 0, max = 1000) double nitrogen) {
    return MOLAR_VOLUME_M3_KMOL
        * (carbon / 2 + hydrogen / 8 - oxygen / 4 - 3 * nitrogen / 8)
        / molarMass(carbon, hydrogen, oxygen, nitrogen);
  }

  /** Share of methane in the gas of a compound. */
  @Formula(
      id = "feed.buswell-methane-fraction",
      symbol = "x_CH4",
      expression = "(n/2 + a/8 - b/4 - 3c/8) / n",
      unit = "1",
      meaning =
          "Methane in methane and carbon dioxide from a compound C_n H_a O_b N_c taken apart whole.",
      source = "buswell-1952",
      equation = "extended with nitrogen")
  public static double buswellMethaneFraction(
      @Argument(symbol = "n", unit = "1", min = 0.001, max = 1000) double carbon,
      @Argument(symbol = "a", unit = "1", min = 0, max = 2000) double hydrogen,
      @Argument(symbol = "b", unit = "1", min = 0, max = 1000) double oxygen,
      @Argument(symbol = "c", unit = "1", min = 0, max = 1000) double nitrogen) {
    return (carbon / 2 + hydrogen / 8 - oxygen / 4 - 3 * nitrogen / 8) / carbon;
  }

  private static double molarMass(double carbon, double hydrogen, double oxygen, double nitrogen) {
    return CARBON * carbon + HYDROGEN * hydrogen + OXYGEN * oxygen + NITROGEN * nitrogen;
  }
}
