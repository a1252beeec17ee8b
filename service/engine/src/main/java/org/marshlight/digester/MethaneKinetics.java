package org.marshlight.digester;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How fast matter is taken apart, what becomes of it, and what leaves dissolved. */
public final class MethaneKinetics {

  /** Molar gas constant, J/(mol.K) (CODATA). */
  private static final double GAS_CONSTANT = 8.314_462_618;

  private static final double KELVIN = 273.15;

  /** Temperature to which rate constants refer, K (35 Cel). */
  private static final double REFERENCE_K = 308.15;

  /** Temperature at which Henry's constant is given, K (25 Cel). */
  private static final double HENRY_REFERENCE_K = 298.15;

  private MethaneKinetics() {}

  /** Rate at a temperature over the rate at 35 Cel; flat above 35 Cel. */
  @Formula(
      id = "digester.arrhenius-factor",
      symbol = "f_T",
      expression = "exp(-(E_a / R) (1/T - 1/308.15)), T held to 308.15 at most",
      unit = "1",
      meaning = "Rate of hydrolysis at a temperature over the rate at 35 Cel.",
      source = "veeken-hamelers-1999",
      equation = "Arrhenius")
  public static double arrheniusFactor(
      @Argument(symbol = "t", unit = "Cel", min = -20, max = 80) double temperatureC,
      @Argument(symbol = "E_a", unit = "kJ/mol", min = 5, max = 150) double activationKJMol) {
    double kelvin = Math.min(REFERENCE_K, temperatureC + KELVIN);
    return FastMath.exp(-activationKJMol * 1000 / GAS_CONSTANT * (1 / kelvin - 1 / REFERENCE_K));
  }

  /** Methane-forming capacity of adapted sludge in the cold, over that at 15 Cel and more. */
  @Formula(
      id = "digester.cold-capacity",
      symbol = "m",
      expression = "0 at t_0, m_10 at 10 Cel, 1 from 15 Cel on, straight between",
      unit = "1",
      meaning = "Methane-forming capacity of adapted sludge over that at 15 Cel.",
      source = "bowen-2014",
      equation = "shape assumed")
  public static double coldCapacity(
      @Argument(symbol = "t", unit = "Cel", min = -20, max = 80) double temperatureC,
      @Argument(symbol = "t_0", unit = "Cel", min = -5, max = 9) double zeroAtC,
      @Argument(symbol = "m_10", unit = "1", min = 0, max = 1) double atTenC) {
    if (temperatureC <= zeroAtC) {
      return 0;
    }
    if (temperatureC < 10) {
      return atTenC * (temperatureC - zeroAtC) / (10 - zeroAtC);
    }
    return Math.min(1, atTenC + (1 - atTenC) * (temperatureC - 10) / 5);
  }

  /** Methane-forming capacity of sludge that is new to the cold, over that at 20 Cel. */
  @Formula(
      id = "digester.unadapted-capacity",
      symbol = "m_u",
      expression = "0 at t_0, m_10 at 10 Cel, m_15 at 15 Cel, 1 from 20 Cel on, straight between",
      unit = "1",
      meaning = "Methane-forming capacity of sludge that is new to the cold, over that at 20 Cel.",
      source = "bowen-2014",
      equation = "shape assumed")
  public static double unadaptedCapacity(
      @Argument(symbol = "t", unit = "Cel", min = -20, max = 80) double temperatureC,
      @Argument(symbol = "t_0", unit = "Cel", min = -5, max = 9) double zeroAtC,
      @Argument(symbol = "m_10", unit = "1", min = 0, max = 1) double atTenC,
      @Argument(symbol = "m_15", unit = "1", min = 0, max = 1) double atFifteenC) {
    if (temperatureC <= zeroAtC) {
      return 0;
    }
    if (temperatureC < 10) {
      return atTenC * (temperatureC - zeroAtC) / (10 - zeroAtC);
    }
    if (temperatureC < 15) {
      return atTenC + (atFifteenC - atTenC) * (temperatureC - 10) / 5;
    }
    return Math.min(1, atFifteenC + (1 - atFifteenC) * (temperatureC - 15) / 5);
  }

  /** Capacity left when sludge that lives at moderate warmth is overheated. */
  @Formula(
      id = "digester.heat-capacity-left",
      symbol = "m_h",
      expression = "1 up to t_1, 0 from t_2 on, straight between",
      unit = "1",
      meaning = "Methane-forming capacity left when mesophilic sludge is overheated.",
      source = "common-practice")
  public static double overheatedCapacity(
      @Argument(symbol = "t", unit = "Cel", min = -20, max = 100) double temperatureC,
      @Argument(symbol = "t_1", unit = "Cel", min = 35, max = 50) double harmlessC,
      @Argument(symbol = "t_2", unit = "Cel", min = 45, max = 75) double deadlyC) {
    return Math.max(0, Math.min(1, (deadlyC - temperatureC) / (deadlyC - harmlessC)));
  }

  /** Share taken apart in one stirred tank. */
  @Formula(
      id = "digester.stirred-conversion",
      symbol = "X",
      expression = "1 - (1 + k theta / n)^-n",
      unit = "1",
      meaning = "Share taken apart at first order in n equal stirred tanks in series.",
      source = "textbook-reactors")
  public static double tanksInSeriesConversion(
      @Argument(symbol = "k", unit = "/d", min = 0, max = 100) double rate,
      @Argument(symbol = "theta", unit = "d", min = 0, max = 10000) double retention,
      @Argument(symbol = "n", unit = "1", min = 1, max = 100) double tanks) {
    return 1 - FastMath.pow(1 + rate * retention / tanks, -tanks);
  }

  /** Share taken apart without mixing along the way. */
  @Formula(
      id = "digester.plug-flow-conversion",
      symbol = "X",
      expression = "1 - exp(-k theta)",
      unit = "1",
      meaning = "Share taken apart at first order in plug flow or in a batch.",
      source = "textbook-reactors")
  public static double plugFlowConversion(
      @Argument(symbol = "k", unit = "/d", min = 0, max = 100) double rate,
      @Argument(symbol = "theta", unit = "d", min = 0, max = 10000) double retention) {
    return 1 - FastMath.exp(-rate * retention);
  }

  /** Methane dissolved in water at rest with a gas. */
  @Formula(
      id = "digester.dissolved-methane",
      symbol = "c",
      expression =
          "16.043 H p; H = H_0 exp(C (1/T - 1/298.15)), H_0 = 1.4e-5 mol m-3 Pa-1, C = 1600 K",
      unit = "mg/L",
      meaning = "Methane dissolved in water at equilibrium with its partial pressure.",
      source = "sander-2015")
  public static double dissolvedMethaneMgL(
      @Argument(symbol = "t", unit = "Cel", min = -5, max = 80) double temperatureC,
      @Argument(symbol = "p", unit = "Pa", min = 0, max = 200000) double partialPressurePa) {
    double kelvin = temperatureC + KELVIN;
    double henry = 1.4e-5 * FastMath.exp(1600 * (1 / kelvin - 1 / HENRY_REFERENCE_K));
    return 16.043 * henry * partialPressurePa;
  }

  /** Dissolved methane in the outflow of a tank, which holds more than at equilibrium. */
  @Formula(
      id = "digester.methane-in-outflow",
      symbol = "c_out",
      expression = "S_o c",
      unit = "mg/L",
      meaning = "Dissolved methane in the outflow of a tank, beyond its equilibrium with the gas.",
      source = "souza-2011")
  public static double methaneInOutflowMgL(
      @Argument(symbol = "c", unit = "mg/L", min = 0, max = 100) double equilibriumMgL,
      @Argument(symbol = "S_o", unit = "1", min = 0.5, max = 6) double oversaturation) {
    return oversaturation * equilibriumMgL;
  }

  /** Share of ammonia in ammonia and ammonium. */
  @Formula(
      id = "digester.free-ammonia-fraction",
      symbol = "f_NH3",
      expression = "1 / (1 + 10^(pKa - pH)); pKa = 0.09018 + 2729.92 / T",
      unit = "1",
      meaning = "Share of free ammonia in ammonia and ammonium, in dilute water.",
      source = "emerson-1975")
  public static double freeAmmoniaFraction(
      @Argument(symbol = "t", unit = "Cel", min = -5, max = 80) double temperatureC,
      @Argument(symbol = "pH", unit = "[pH]", min = 3, max = 12) double acidity) {
    double pKa = 0.09018 + 2729.92 / (temperatureC + KELVIN);
    return 1 / (1 + FastMath.pow(10, pKa - acidity));
  }

  /** Net heating value of methane. */
  @Formula(
      id = "digester.methane-energy",
      symbol = "E",
      expression = "V 802.60 / (22.41396954 3.6)",
      unit = "kW.h",
      meaning = "Net heating value of dry methane counted at 0 Cel and 101.325 kPa.",
      source = "iso-6976",
      equation = "net, 25 Cel")
  public static double methaneEnergyKWh(
      @Argument(symbol = "V", unit = "m3", min = 0, max = 1e9) double methaneNm3) {
    return methaneNm3 * 802.60 / 22.413_969_54 / 3.6;
  }

  /** Volume of a dry gas that stands wet at its own temperature and pressure. */
  @Formula(
      id = "digester.normal-volume",
      symbol = "V_n",
      expression =
          "V (273.15 / T) (P - p_w) / 101.325; p_w = 0.6112 exp(17.62 t / (243.12 + t)) kPa",
      unit = "m3",
      meaning = "Dry volume at 0 Cel and 101.325 kPa of gas saturated at a state.",
      source = "magnus-sonntag",
      equation = "water vapour")
  public static double normalVolumeNm3(
      @Argument(symbol = "V", unit = "m3", min = 0, max = 1e9) double wetVolumeM3,
      @Argument(symbol = "t", unit = "Cel", min = -40, max = 80) double temperatureC,
      @Argument(symbol = "P", unit = "kPa", min = 30, max = 200) double pressureKPa) {
    return wetVolumeM3
        * KELVIN
        / (temperatureC + KELVIN)
        * (pressureKPa - vapourPressureKPa(temperatureC))
        / 101.325;
  }

  /** Saturation pressure of water vapour over a store. */
  @Formula(
      id = "digester.vapour-pressure",
      symbol = "p_w",
      expression = "0.6112 exp(17.62 t / (243.12 + t))",
      unit = "kPa",
      meaning = "Saturation pressure of water vapour.",
      source = "magnus-sonntag")
  public static double vapourPressureKPa(
      @Argument(symbol = "t", unit = "Cel", min = -45, max = 60) double temperatureC) {
    return 0.6112 * FastMath.exp(17.62 * temperatureC / (243.12 + temperatureC));
  }

  /** Growth rate of the independent estimate. */
  @Formula(
      id = "digester.chen-hashimoto-growth",
      symbol = "mu_m",
      expression = "0.013 t - 0.129",
      unit = "/d",
      meaning = "Greatest growth rate of methanogens in the estimate of Chen and Hashimoto.",
      source = "chen-hashimoto-1978")
  public static double chenHashimotoGrowth(
      @Argument(symbol = "t", unit = "Cel", min = 10, max = 60) double temperatureC) {
    return 0.013 * temperatureC - 0.129;
  }

  /** Methane of the independent estimate; not below 15 Cel. */
  @Formula(
      id = "digester.chen-hashimoto-yield",
      symbol = "gamma_v",
      expression = "(B_0 S_0 / HRT) (1 - K / (HRT mu_m - 1 + K)); K = 0.8 + 0.0016 exp(0.06 S_0)",
      unit = "m3/(m3.d)",
      meaning = "Methane for each volume of tank in the estimate of Chen and Hashimoto.",
      source = "chen-hashimoto-1978")
  public static double chenHashimotoYield(
      @Argument(symbol = "B_0", unit = "m3/kg", min = 0, max = 1.1) double ultimateYield,
      @Argument(symbol = "S_0", unit = "kg/m3", min = 0, max = 120) double strength,
      @Argument(symbol = "HRT", unit = "d", min = 1, max = 1000) double retention,
      @Argument(symbol = "mu_m", unit = "/d", min = 0.01, max = 1) double growth) {
    double k = 0.8 + 0.0016 * FastMath.exp(0.06 * strength);
    double denominator = retention * growth - 1 + k;
    if (retention * growth <= 1) {
      return 0;
    }
    return ultimateYield * strength / retention * (1 - k / denominator);
  }
}
