package org.marshlight.ethanol;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** What ethanol with water in it is worth as fuel, and when its vapour lights. */
public final class FuelProperties {

  private static final double LITRES_PER_M3 = 1000;
  private static final double COLDEST_C = -10;
  private static final double HOTTEST_C = 100;

  private FuelProperties() {}

  /** Net heating value by mass. */
  @Formula(
      id = "ethanol.hydrous-heating-value",
      symbol = "H",
      expression = "p H_E - (1 - p) l_W",
      unit = "MJ/kg",
      meaning = "Net heating value of ethanol with water, the water's evaporation taken off.",
      source = "common-practice")
  public static double heatingValueMJKg(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double massFraction,
      @Argument(symbol = "H_E", unit = "MJ/kg", min = 20, max = 35) double pureMJKg,
      @Argument(symbol = "l_W", unit = "MJ/kg", min = 2, max = 3) double evaporationMJKg) {
    return massFraction * pureMJKg - (1 - massFraction) * evaporationMJKg;
  }

  /** Net heating value by volume. */
  @Formula(
      id = "ethanol.heating-value-per-litre",
      symbol = "H_V",
      expression = "(p H_E - (1 - p) l_W) rho(p, 20) / 1000",
      unit = "MJ/L",
      meaning = "Net heating value of a litre of ethanol with water at 20 Cel.",
      source = "oiml-r22",
      equation = "density from the general formula")
  public static double heatingValueMJL(
      @Argument(symbol = "p", unit = "1", min = 0, max = 1) double massFraction,
      @Argument(symbol = "H_E", unit = "MJ/kg", min = 20, max = 35) double pureMJKg,
      @Argument(symbol = "l_W", unit = "MJ/kg", min = 2, max = 3) double evaporationMJKg) {
    return heatingValueMJKg(massFraction, pureMJKg, evaporationMJKg)
        * Alcoholometry.densityKgM3(massFraction, 20)
        / LITRES_PER_M3;
  }

  /** Temperature at which the vapour over a mixture can be lit. */
  @Formula(
      id = "ethanol.flash-point",
      symbol = "t_f",
      expression = "root of x gamma_E P_E(t) = P_E(t_E), x the mole fraction of q",
      unit = "Cel",
      meaning =
          "Flash point of ethanol with water: where the ethanol over it reaches the vapour"
              + " pressure that pure ethanol has at its own flash point.",
      source = "liaw-2005",
      equation = "one fuel with a part that does not burn")
  public static double flashPointC(
      @Argument(symbol = "q", unit = "1", min = 0.02, max = 1) double volumeFraction,
      @Argument(symbol = "t_E", unit = "Cel", min = 5, max = 25) double pureFlashPointC) {
    double x = Alcoholometry.moleFractionOfVolume(volumeFraction);
    double held = x * EthanolWaterEquilibrium.activityOfEthanol(x);
    double needed =
        FastMath.log(EthanolWaterEquilibrium.vapourPressureOfEthanolKPa(pureFlashPointC) / held);
    return Root.of(
        t -> FastMath.log(EthanolWaterEquilibrium.vapourPressureOfEthanolKPa(t)) - needed,
        COLDEST_C,
        HOTTEST_C);
  }
}
