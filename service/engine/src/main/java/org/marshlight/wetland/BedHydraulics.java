package org.marshlight.wetland;

import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** Flow of water through gravel. */
public final class BedHydraulics {

  private BedHydraulics() {}

  @Formula(
      id = "wetland.darcy-section",
      symbol = "A_c",
      expression = "Q / (K S)",
      unit = "m2",
      meaning = "Section across the flow that a bed needs to keep water below its surface.",
      source = "epa-region6-1993")
  public static double sectionM2(
      @Argument(symbol = "Q", unit = "m3/d", min = 0, max = 1e9) double flowM3Day,
      @Argument(symbol = "K", unit = "m/d", min = 0.001, max = 1e7) double conductivityMDay,
      @Argument(symbol = "S", unit = "1", min = 1e-6, max = 1) double slope) {
    return flowM3Day / (conductivityMDay * slope);
  }

  @Formula(
      id = "wetland.darcy-capacity",
      symbol = "Q",
      expression = "K S W d",
      unit = "m3/d",
      meaning = "Flow that a bed passes with water below its surface.",
      source = "epa-region6-1993")
  public static double capacityM3Day(
      @Argument(symbol = "K", unit = "m/d", min = 0, max = 1e7) double conductivityMDay,
      @Argument(symbol = "S", unit = "1", min = 0, max = 1) double slope,
      @Argument(symbol = "W", unit = "m", min = 0, max = 1e6) double widthM,
      @Argument(symbol = "d", unit = "m", min = 0, max = 10) double depthM) {
    return conductivityMDay * slope * widthM * depthM;
  }

  /** Length of a bed twice as long as wide, unless a plan gives its length, m. */
  static double lengthM(BedDesign bed) {
    return bed.lengthM() == null ? Math.sqrt(2 * bed.areaM2()) : bed.lengthM();
  }
}
