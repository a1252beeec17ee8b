package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Reed's model: removal by volume and time in plug flow. A second opinion beside P-k-C*. */
public final class FirstOrderDetention {

  private FirstOrderDetention() {}

  @Formula(
      id = "wetland.retention-time",
      symbol = "t",
      expression = "A d n / Q",
      unit = "d",
      meaning = "Time that water stays in a bed.",
      source = "reed-1995")
  public static double retentionDays(
      @Argument(symbol = "A", unit = "m2", min = 0, max = 1e9) double areaM2,
      @Argument(symbol = "d", unit = "m", min = 0, max = 10) double depthM,
      @Argument(symbol = "n", unit = "1", min = 0, max = 1) double porosity,
      @Argument(symbol = "Q", unit = "m3/d", min = 1e-9, max = 1e9) double flowM3Day) {
    return areaM2 * depthM * porosity / flowM3Day;
  }

  @Formula(
      id = "wetland.reed-outflow",
      symbol = "C_e",
      expression = "C_i exp(-K_T t)",
      unit = "mg/L",
      meaning = "Outflow concentration of a plug-flow bed.",
      source = "reed-1995")
  public static double outflowMgL(
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e9) double inflowMgL,
      @Argument(symbol = "K_T", unit = "/d", min = 0, max = 1000) double ratePerDay,
      @Argument(symbol = "t", unit = "d", min = 0, max = 1e9) double retentionDays) {
    return inflowMgL * FastMath.exp(-ratePerDay * retentionDays);
  }

  @Formula(
      id = "wetland.reed-area",
      symbol = "A",
      expression = "Q ln(C_i / C_e) / (K_T d n)",
      unit = "m2",
      meaning = "Area that a plug-flow bed needs for an outflow concentration.",
      source = "reed-1995")
  public static double areaM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "C_i", unit = "mg/L", min = 1e-6, max = 1e9) double inflowMgL,
      @Argument(symbol = "C_e", unit = "mg/L", min = 1e-6, max = 1e9) double outflowMgL,
      @Argument(symbol = "K_T", unit = "/d", min = 1e-6, max = 1000) double ratePerDay,
      @Argument(symbol = "d", unit = "m", min = 0.001, max = 10) double depthM,
      @Argument(symbol = "n", unit = "1", min = 0.001, max = 1) double porosity) {
    return flowM3Day * FastMath.log(inflowMgL / outflowMgL) / (ratePerDay * depthM * porosity);
  }

  @Formula(
      id = "wetland.reed-ammonium-rate",
      symbol = "K_NH",
      expression = "0.01854 + 0.3922 rz^2.6077",
      unit = "/d",
      meaning = "Rate of ammonium removal at 20 Cel in a bed with water below its surface.",
      source = "reed-1995")
  public static double ammoniumRatePerDay(
      @Argument(symbol = "rz", unit = "1", min = 0, max = 1) double rootedShareOfDepth) {
    return 0.01854 + 0.3922 * FastMath.pow(rootedShareOfDepth, 2.6077);
  }

  @Formula(
      id = "wetland.reed-phosphorus",
      symbol = "C_e",
      expression = "C_i exp(-2.73 / HLR)",
      unit = "mg/L",
      meaning = "Phosphorus in the outflow from the loading with water alone.",
      source = "reed-1995")
  public static double phosphorusMgL(
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e6) double inflowMgL,
      @Argument(symbol = "HLR", unit = "cm/d", min = 1e-9, max = 1e6) double loadingCmDay) {
    return inflowMgL * FastMath.exp(-2.73 / loadingCmDay);
  }

  @Formula(
      id = "wetland.reed-solids",
      symbol = "C_e",
      expression = "C_i min(1, a + b HLR)",
      unit = "mg/L",
      meaning = "Suspended solids in the outflow from the loading with water alone.",
      source = "reed-1995")
  public static double solidsMgL(
      @Argument(symbol = "C_i", unit = "mg/L", min = 0, max = 1e6) double inflowMgL,
      @Argument(symbol = "a", unit = "1", min = 0, max = 1) double intercept,
      @Argument(symbol = "b", unit = "d/cm", min = 0, max = 1) double slope,
      @Argument(symbol = "HLR", unit = "cm/d", min = 0, max = 1e6) double loadingCmDay) {
    return inflowMgL * Math.min(1, intercept + slope * loadingCmDay);
  }
}
