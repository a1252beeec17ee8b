package org.marshlight.decision;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.Stoichiometry;

/** What gases weigh in the climate. */
public final class Warming {

  /** Nitrous oxide for each kg of its nitrogen: 44.013 / 28.014. */
  private static final double NITROUS_OXIDE_PER_NITROGEN = 44.013 / 28.014;

  private static final double GJ_PER_MILLION_BTU = 1.055_055_852_62;
  private static final double KWH_PER_GJ = 1000 / 3.6;
  private static final double KG_PER_POUND = 0.453_592_37;

  private Warming() {}

  /** Carbon dioxide that warms as much as some methane, nitrous oxide and carbon dioxide. */
  @Formula(
      id = "decision.carbon-dioxide-equivalent",
      symbol = "E",
      expression = "m_CO2 + GWP_CH4 m_CH4 + GWP_N2O m_N2O",
      unit = "kg",
      meaning = "Carbon dioxide that warms as much over the horizon of the two potentials.",
      source = "ipcc-ar6",
      equation = "definition of the global warming potential")
  public static double equivalentKg(
      @Argument(symbol = "m_CO2", unit = "kg", min = -1e9, max = 1e9) double carbonDioxideKg,
      @Argument(symbol = "m_CH4", unit = "kg", min = -1e9, max = 1e9) double methaneKg,
      @Argument(symbol = "m_N2O", unit = "kg", min = -1e9, max = 1e9) double nitrousOxideKg,
      @Argument(symbol = "GWP_CH4", unit = "1", min = 0, max = 200) double methanePotential,
      @Argument(symbol = "GWP_N2O", unit = "1", min = 0, max = 500) double nitrousOxidePotential) {
    return carbonDioxideKg + methanePotential * methaneKg + nitrousOxidePotential * nitrousOxideKg;
  }

  /** Potential of methane from fossil carbon, which ends as carbon dioxide that was not there. */
  @Formula(
      id = "decision.fossil-methane-potential",
      symbol = "GWP_f",
      expression = "GWP + M_CO2 / M_CH4",
      unit = "1",
      meaning =
          "Warming potential of fossil methane: that of other methane and the carbon dioxide that"
              + " it turns into.",
      source = "ipcc-ar6",
      equation = "all of the methane taken as oxidised")
  public static double fossilMethanePotential(
      @Argument(symbol = "GWP", unit = "1", min = 0, max = 200) double methanePotential) {
    return methanePotential + Stoichiometry.CARBON_DIOXIDE / Stoichiometry.METHANE;
  }

  /** Leak at which burning methane in place of a fuel does the climate no good. */
  @Formula(
      id = "decision.break-even-leak",
      symbol = "l*",
      expression = "k / (k + GWP)",
      unit = "1",
      meaning =
          "Leaked share of methane at which the rest, burned in place of a fuel whose carbon"
              + " dioxide is k for each kg of methane, only makes up for the leak; nothing was"
              + " emitted before.",
      source = "common-practice",
      equation = "from GWP l = k (1 - l)")
  public static double breakEvenLeak(
      @Argument(symbol = "k", unit = "kg/kg", min = 0, max = 100) double sparedPerMethane,
      @Argument(symbol = "GWP", unit = "1", min = 0.1, max = 200) double methanePotential) {
    return sparedPerMethane / (sparedPerMethane + methanePotential);
  }

  /** Carbon dioxide spared by a kg of methane. */
  @Formula(
      id = "decision.spared-by-methane",
      symbol = "k",
      expression = "H eta_b / eta_f f",
      unit = "kg/kg",
      meaning =
          "Carbon dioxide of the fuel that a kg of methane takes the place of, both through their"
              + " stoves.",
      source = "common-practice",
      equation = "equal useful heat")
  public static double sparedPerMethane(
      @Argument(symbol = "H", unit = "MJ/kg", min = 1, max = 60) double netHeatingValueMJKg,
      @Argument(symbol = "eta_b", unit = "1", min = 0.01, max = 1) double burnerEfficiency,
      @Argument(symbol = "eta_f", unit = "1", min = 0.01, max = 1) double stoveEfficiency,
      @Argument(symbol = "f", unit = "kg/GJ", min = 0, max = 500) double factorKgGJ) {
    return netHeatingValueMJKg * burnerEfficiency / stoveEfficiency * factorKgGJ / 1000;
  }

  /** Nitrous oxide of nitrogen that turns to it. */
  @Formula(
      id = "decision.nitrous-oxide",
      symbol = "m_N2O",
      expression = "EF N 44 / 28",
      unit = "kg",
      meaning = "Nitrous oxide from the share EF of an amount of nitrogen.",
      source = "ipcc-2006",
      equation = "volume 4, chapter 11")
  public static double nitrousOxideKg(
      @Argument(symbol = "N", unit = "kg", min = 0, max = 1e9) double nitrogenKg,
      @Argument(symbol = "EF", unit = "kg/kg", min = 0, max = 1) double share) {
    return nitrogenKg * share * NITROUS_OXIDE_PER_NITROGEN;
  }

  /** Methane from the degradable matter of a waste that lies without air. */
  @Formula(
      id = "decision.methane-of-store",
      symbol = "m_CH4",
      expression = "MCF COD_d / (4 M_O / M_CH4)",
      unit = "kg",
      meaning =
          "Methane of a waste of which the share MCF of the degradable COD turns to it while it"
              + " lies.",
      source = "ipcc-2006",
      equation = "volume 4, chapter 10: methane conversion factor")
  public static double methaneOfStoreKg(
      @Argument(symbol = "COD_d", unit = "kg", min = 0, max = 1e9) double degradableCodKg,
      @Argument(symbol = "MCF", unit = "1", min = 0, max = 1) double conversionFactor) {
    return conversionFactor * degradableCodKg / Stoichiometry.METHANE_COD;
  }

  /** Emission factor of a table in pounds of carbon dioxide for each kWh. */
  @Formula(
      id = "decision.factor-of-pounds",
      symbol = "f",
      expression = "0.45359237 f_lb",
      unit = "kg/(kW.h)",
      meaning = "Carbon dioxide for each kWh of a factor printed in pounds.",
      source = "eia-2023",
      equation = "question 74")
  public static double factorOfPounds(
      @Argument(symbol = "f_lb", unit = "[lb_av]/(kW.h)", min = 0, max = 10) double poundsPerKWh) {
    return poundsPerKWh * KG_PER_POUND;
  }

  /** Emission factor of a table that counts gross heating value in British thermal units. */
  @Formula(
      id = "decision.net-emission-factor",
      symbol = "f",
      expression = "f_g / 1.05505585 r",
      unit = "kg/GJ",
      meaning =
          "Carbon dioxide for each GJ of net heating value from a factor for each million Btu of"
              + " gross heating value; r is gross over net heating value.",
      source = "cfr-98",
      equation = "table C-1")
  public static double netEmissionFactorKgGJ(
      @Argument(symbol = "f_g", unit = "mg/[Btu_IT]", min = 0, max = 500) double grossMgPerBtu,
      @Argument(symbol = "r", unit = "1", min = 1, max = 1.3) double grossOverNet) {
    return grossMgPerBtu / GJ_PER_MILLION_BTU * grossOverNet;
  }

  /** Emission factor for each kWh from one for each GJ. */
  @Formula(
      id = "decision.emission-factor-per-kwh",
      symbol = "f",
      expression = "f_GJ / 277.78",
      unit = "kg/(kW.h)",
      meaning = "Carbon dioxide for each kWh from a factor for each GJ on the same basis.",
      source = "ipcc-2006",
      equation = "3.6 MJ/kWh")
  public static double factorKgKWh(
      @Argument(symbol = "f_GJ", unit = "kg/GJ", min = 0, max = 500) double factorKgGJ) {
    return factorKgGJ / KWH_PER_GJ;
  }
}
