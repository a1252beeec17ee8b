package org.marshlight.digester;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** How hot a dry lid gets under glass in full sun, when no liquor takes its heat. */
public final class Stagnation {

  private static final double KELVIN = 273.15;

  private static final double HOTTEST_ABOVE_AIR_K = 600;

  private Stagnation() {}

  /**
   * Loss of an absorber through panes, all in one expression, fitted to the network of resistances.
   */
  @Formula(
      id = "digester.klein-top-loss",
      symbol = "U_t",
      expression =
          "1 / (N / ((C / T_p) ((T_p - T_a) / (N + f))^e) + 1 / h_w)"
              + " + sigma (T_p + T_a) (T_p^2 + T_a^2)"
              + " / (1 / (eps_p + 0.00591 N h_w) + (2 N + f - 1 + 0.133 eps_p) / eps_g - N);"
              + " f = (1 + 0.089 h_w - 0.1166 h_w eps_p) (1 + 0.07866 N),"
              + " C = 520 (1 - 0.000051 b^2), b <= 70 deg, e = 0.43 (1 - 100 / T_p)",
      unit = "W/(m2.K)",
      meaning = "Heat that a glazed absorber loses upwards for each kelvin above the air.",
      source = "klein-1975",
      equation = "Duffie and Beckman 6.4.9")
  public static double topLossWM2K(
      @Argument(symbol = "T_p", unit = "K", min = 250, max = 900) double plateK,
      @Argument(symbol = "T_a", unit = "K", min = 200, max = 340) double airK,
      @Argument(symbol = "h_w", unit = "W/(m2.K)", min = 1, max = 100) double windWM2K,
      @Argument(symbol = "eps_p", unit = "1", min = 0.01, max = 1) double plateEmittance,
      @Argument(symbol = "eps_g", unit = "1", min = 0.01, max = 1) double glassEmittance,
      @Argument(symbol = "b", unit = "deg", min = 0, max = 90) double tiltDeg,
      @Argument(symbol = "N", unit = "1", min = 1, max = 3) double panes) {
    double tilt = Math.min(CoverDesign.STEEPEST_ROOF_DEG, tiltDeg);
    double c = 520 * (1 - 0.000_051 * tilt * tilt);
    double f = (1 + 0.089 * windWM2K - 0.1166 * windWM2K * plateEmittance) * (1 + 0.078_66 * panes);
    double e = 0.43 * (1 - 100 / plateK);
    double convection =
        c / plateK * FastMath.pow(Math.max(0, plateK - airK) / (panes + f), e) / panes;
    double longWaves =
        CoverHeatTransfer.longWave(plateK, airK, CoverHeatTransfer.SIGMA)
            / (1 / (plateEmittance + 0.005_91 * panes * windWM2K)
                + (2 * panes + f - 1 + 0.133 * plateEmittance) / glassEmittance
                - panes);
    return convection / (1 + convection / windWM2K) + longWaves;
  }

  /** Temperature of a dry absorber under sun from which nothing is taken. */
  @Formula(
      id = "digester.stagnation-temperature",
      symbol = "T_stag",
      expression = "T_a + G (tau alpha) / U_L",
      unit = "Cel",
      meaning = "Temperature of a dry glazed absorber from which no heat is taken.",
      source = "duffie-beckman")
  public static double temperatureC(
      @Argument(symbol = "T_a", unit = "Cel", min = -60, max = 60) double airC,
      @Argument(symbol = "G", unit = "W/m2", min = 0, max = 1500) double irradiance,
      @Argument(symbol = "(tau alpha)", unit = "1", min = 0, max = 1)
          double transmittanceAbsorptance,
      @Argument(symbol = "U_L", unit = "W/(m2.K)", min = 0.1, max = 30) double lossCoefficient) {
    return airC + irradiance * transmittanceAbsorptance / lossCoefficient;
  }

  /**
   * The temperature at which a lid under this cover loses upwards all the sun that it takes up.
   * Back and sides are taken to be tight, as on the worst day they may be. Where the glass is
   * larger than the lid, the lid takes up the sun of all glass that fits over it, as by the hour,
   * and loses heat through an area of glass no larger than its own.
   *
   * @param lidM2 area of the lid
   */
  static double ofCoverC(
      CoverDesign cover, double lidM2, StagnationCoefficients worst, HeatCoefficients heat) {
    double airK = worst.airC() + KELVIN;
    double windWM2K = CoverHeatTransfer.windCoefficient(worst.windMS());
    double concentration = Math.max(1, cover.collectingM2(lidM2) / lidM2);
    double takenUp = Glazing.of(cover, heat).atNormalIncidence();
    double aboveAirK =
        new BrentSolver(1e-9, 1e-9)
            .solve(
                200,
                above ->
                    above
                        - temperatureC(
                            0,
                            worst.irradiance() * concentration,
                            takenUp,
                            topLossWM2K(
                                airK + above,
                                airK,
                                windWM2K,
                                heat.lidEmittance(),
                                heat.glassEmittance(),
                                cover.tiltDeg(),
                                cover.layers())),
                0,
                HOTTEST_ABOVE_AIR_K);
    return worst.airC() + aboveAirK;
  }
}
