package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Rain, evapotranspiration and what is left of the water. */
public final class WaterBalance {

  private WaterBalance() {}

  /** A small stand stands in the wind like washing on a line and loses more than a field. */
  @Formula(
      id = "wetland.full-crop-coefficient",
      symbol = "K_c",
      expression =
          "K_small + (K_field - K_small) clamp(ln(A / A_small) / ln(A_field / A_small), 0, 1)",
      unit = "1",
      meaning = "Evapotranspiration of a stand in full leaf over that of short grass.",
      source = "fao56",
      equation = "chapter 10, small stands")
  public static double fullCropCoefficient(
      @Argument(symbol = "K_small", unit = "1", min = 0, max = 10) double smallStand,
      @Argument(symbol = "K_field", unit = "1", min = 0, max = 10) double field,
      @Argument(symbol = "A", unit = "m2", min = 0.01, max = 1e9) double areaM2,
      @Argument(symbol = "A_small", unit = "m2", min = 0.01, max = 1e9) double smallAreaM2,
      @Argument(symbol = "A_field", unit = "m2", min = 0.02, max = 1e9) double fieldAreaM2) {
    double share = FastMath.log(areaM2 / smallAreaM2) / FastMath.log(fieldAreaM2 / smallAreaM2);
    return smallStand + (field - smallStand) * Math.max(0, Math.min(1, share));
  }

  @Formula(
      id = "wetland.crop-coefficient",
      symbol = "K_c(c)",
      expression = "K_dormant + (K_full - K_dormant) c",
      unit = "1",
      meaning = "Crop coefficient of a bed whose canopy stands at a share of full leaf.",
      source = "fao56",
      equation = "table 12")
  public static double cropCoefficient(
      @Argument(symbol = "K_dormant", unit = "1", min = 0, max = 10) double dormant,
      @Argument(symbol = "K_full", unit = "1", min = 0, max = 10) double full,
      @Argument(symbol = "c", unit = "1", min = 0, max = 1) double canopy) {
    return dormant + (full - dormant) * canopy;
  }

  @Formula(
      id = "wetland.outflow",
      symbol = "Q_out",
      expression = "max(0, Q_in + (R - K_c ET_0) A / 1000)",
      unit = "m3/d",
      meaning = "Water that leaves a bed; nought where plants take all that comes.",
      source = "fao56",
      equation = "58, with rain")
  public static double outflowM3Day(
      @Argument(symbol = "Q_in", unit = "m3/d", min = 0, max = 1e9) double inflowM3Day,
      @Argument(symbol = "R", unit = "mm/d", min = 0, max = 1000) double rainMmDay,
      @Argument(symbol = "K_c", unit = "1", min = 0, max = 10) double cropCoefficient,
      @Argument(symbol = "ET_0", unit = "mm/d", min = 0, max = 50) double referenceMmDay,
      @Argument(symbol = "A", unit = "m2", min = 0, max = 1e9) double areaM2) {
    double net = (rainMmDay - cropCoefficient * referenceMmDay) * areaM2 / 1000;
    return Math.max(0, inflowM3Day + net);
  }

  @Formula(
      id = "wetland.concentration-factor",
      symbol = "f_c",
      expression = "Q_in / Q_out",
      unit = "1",
      meaning = "How much what stays dissolved grows stronger, or weaker, on its way.",
      source = "kadlec-wallace-2009")
  public static double concentrationFactor(
      @Argument(symbol = "Q_in", unit = "m3/d", min = 0, max = 1e9) double inflowM3Day,
      @Argument(symbol = "Q_out", unit = "m3/d", min = 1e-9, max = 1e9) double outflowM3Day) {
    return inflowM3Day / outflowM3Day;
  }
}
