package org.marshlight.safety;

import java.util.OptionalDouble;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.Stoichiometry;

/**
 * Gas that leaks into a room whose air is taken as well mixed. Real gas pools and layers, so that a
 * dangerous mix comes sooner somewhere in the room than these say.
 */
public final class RoomGas {

  /** Molar mass of dry air, kg/kmol. */
  private static final double AIR = 28.964;

  private RoomGas() {}

  /** Methane share that a leak brings a room to in the end. */
  @Formula(
      id = "safety.room-steady-fraction",
      symbol = "C_inf",
      expression = "x q / (Q + q)",
      unit = "1",
      meaning = "Share of methane in a room's air after a long leak of gas with methane share x.",
      source = "usbr-hvac",
      equation = "balance of a well-mixed room, leak counted as air change")
  public static double steadyFraction(
      @Argument(symbol = "q", unit = "m3/h", min = 0, max = 1e5) double leakM3Hour,
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double methaneFraction,
      @Argument(symbol = "Q", unit = "m3/h", min = 1e-9, max = 1e7) double airM3Hour) {
    return methaneFraction * leakM3Hour / (airM3Hour + leakM3Hour);
  }

  /** Time until a leak has brought a room to a share of methane. */
  @Formula(
      id = "safety.room-time",
      symbol = "t",
      expression = "-V / (Q + q) ln(1 - C / C_inf)",
      unit = "h",
      meaning =
          "Time from the start of a leak until the room's air holds a share of methane; has no"
              + " value where it never does.",
      source = "usbr-hvac",
      equation = "build-up in a well-mixed room")
  public static double hoursTo(
      @Argument(symbol = "C", unit = "1", min = 0, max = 1) double methaneShare,
      @Argument(symbol = "V", unit = "m3", min = 0.1, max = 1e6) double roomM3,
      @Argument(symbol = "q", unit = "m3/h", min = 0, max = 1e5) double leakM3Hour,
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double methaneFraction,
      @Argument(symbol = "Q", unit = "m3/h", min = 1e-9, max = 1e7) double airM3Hour) {
    return time(methaneShare, roomM3, leakM3Hour, methaneFraction, airM3Hour).orElse(Double.NaN);
  }

  /** The time, or empty where the share is never reached. */
  static OptionalDouble time(
      double share, double roomM3, double leakM3Hour, double methaneFraction, double airM3Hour) {
    double steady = steadyFraction(leakM3Hour, methaneFraction, airM3Hour);
    return share >= steady
        ? OptionalDouble.empty()
        : OptionalDouble.of(-roomM3 / (airM3Hour + leakM3Hour) * FastMath.log1p(-share / steady));
  }

  /** Air that keeps a leak below a share of methane. */
  @Formula(
      id = "safety.ventilation-needed",
      symbol = "Q",
      expression = "q (x / C - 1)",
      unit = "m3/h",
      meaning = "Fresh air that holds a room's methane at a share during a leak.",
      source = "usbr-hvac",
      equation = "steady balance solved for the air")
  public static double airNeededM3Hour(
      @Argument(symbol = "q", unit = "m3/h", min = 0, max = 1e5) double leakM3Hour,
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double methaneFraction,
      @Argument(symbol = "C", unit = "1", min = 1e-6, max = 1) double methaneShare) {
    return Math.max(0, leakM3Hour * (methaneFraction / methaneShare - 1));
  }

  /** Air changes that clear a room. */
  @Formula(
      id = "safety.purge-air-changes",
      symbol = "N",
      expression = "ln(C_0 / C_1) / K",
      unit = "1",
      meaning =
          "Air changes that bring a share of gas from C_0 to C_1; the mixing efficiency K is at most"
              + " one, and lower where air mixes badly.",
      source = "usbr-hvac",
      equation = "p. 106")
  public static double purgeAirChanges(
      @Argument(symbol = "C_0", unit = "1", min = 1e-6, max = 1) double firstShare,
      @Argument(symbol = "C_1", unit = "1", min = 1e-6, max = 1) double lastShare,
      @Argument(symbol = "K", unit = "1", min = 0.01, max = 1) double mixingEfficiency) {
    return FastMath.log(firstShare / lastShare) / mixingEfficiency;
  }

  /** Hydrogen sulphide in a room that gas has brought to a share of methane. */
  @Formula(
      id = "safety.room-hydrogen-sulphide",
      symbol = "S_r",
      expression = "S C / x",
      unit = "[ppm]",
      meaning = "Hydrogen sulphide in a room whose methane share C comes from gas that holds S.",
      source = "common-practice",
      equation = "dilution of gas with methane share x")
  public static double roomSulphidePpm(
      @Argument(symbol = "S", unit = "[ppm]", min = 0, max = 1e6) double gasSulphidePpm,
      @Argument(symbol = "C", unit = "1", min = 0, max = 1) double methaneShare,
      @Argument(symbol = "x", unit = "1", min = 0.01, max = 1) double methaneFraction) {
    return gasSulphidePpm * methaneShare / methaneFraction;
  }

  /** Density of a tank's gas over that of air. */
  @Formula(
      id = "safety.relative-density",
      symbol = "s",
      expression = "(x M_CH4 + (1 - x) M_CO2) / M_air",
      unit = "1",
      meaning =
          "Density of dry methane and carbon dioxide over that of dry air; above one the gas sinks.",
      source = "stoichiometry",
      equation = "ideal gases")
  public static double relativeDensity(
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double methaneFraction) {
    return (methaneFraction * Stoichiometry.METHANE
            + (1 - methaneFraction) * Stoichiometry.CARBON_DIOXIDE)
        / AIR;
  }

  /** Air that a volume of gas can make flammable. */
  @Formula(
      id = "safety.air-made-flammable",
      symbol = "V_a",
      expression = "V x / L",
      unit = "m3",
      meaning =
          "Mixture at the lower limit of flammability that a volume of gas with methane share x can"
              + " make.",
      source = "methane-limits",
      equation = "dilution to the limit L")
  public static double flammableM3(
      @Argument(symbol = "V", unit = "m3", min = 0, max = 1e6) double gasM3,
      @Argument(symbol = "x", unit = "1", min = 0, max = 1) double methaneFraction,
      @Argument(symbol = "L", unit = "1", min = 0.01, max = 0.2) double limit) {
    return gasM3 * methaneFraction / limit;
  }
}
