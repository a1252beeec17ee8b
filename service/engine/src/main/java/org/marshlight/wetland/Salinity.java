package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.WaterStream;

/**
 * Salt in what the beds let go. What use adds to the water is in its minerals; what the supply
 * brought is followed beside it, as something that nothing takes and only water thins.
 */
public final class Salinity {

  private static final double KG_PER_M3_OF_MG_L = 1e-3;

  private Salinity() {}

  @Formula(
      id = "wetland.conductivity",
      symbol = "EC",
      expression = "TDS / f",
      unit = "dS/m",
      meaning = "Electrical conductivity of water with so much dissolved in it.",
      source = "fao29")
  public static double conductivityDSM(
      @Argument(symbol = "TDS", unit = "mg/L", min = 0, max = 1e9) double dissolvedSolidsMgL,
      @Argument(symbol = "f", unit = "mg.m/(L.dS)", min = 100, max = 2000) double perConductivity) {
    return dissolvedSolidsMgL / perConductivity;
  }

  @Formula(
      id = "wetland.sodium-adsorption-ratio",
      symbol = "SAR",
      expression = "SAR_0 sqrt(f)",
      unit = "1",
      meaning =
          "Sodium adsorption ratio, Na / sqrt((Ca + Mg) / 2) in milliequivalents a litre, of water"
              + " whose salts have all become stronger by one factor.",
      source = "fao29")
  public static double sodiumAdsorptionRatio(
      @Argument(symbol = "SAR_0", unit = "1", min = 0, max = 1000) double inflowRatio,
      @Argument(symbol = "f", unit = "1", min = 0, max = 1e6) double saltFactor) {
    return inflowRatio * FastMath.sqrt(saltFactor);
  }

  /**
   * How much stronger the salts of the inflow leave in each month; not a number without outflow.
   */
  static double[] factor(BedChain<?> chain) {
    double[] salts = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      salts[month] = chain.inflow().volumeM3(month);
    }
    for (BedYear<?> year : chain.years()) {
      salts = through(year, salts);
    }
    for (int month = 0; month < Months.COUNT; month++) {
      double volume = chain.outflow().volumeM3(month);
      salts[month] = volume > 0 ? salts[month] / volume : Double.NaN;
    }
    return salts;
  }

  /**
   * Dissolved solids that leave the last bed in each month, kg.
   *
   * @param chain the beds, run
   * @param suppliedMgL minerals of the water supply
   */
  static double[] leavingKg(BedChain<?> chain, double suppliedMgL) {
    double[] supplied = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      supplied[month] = KG_PER_M3_OF_MG_L * suppliedMgL * chain.inflow().volumeM3(month);
    }
    for (BedYear<?> year : chain.years()) {
      supplied = through(year, supplied);
    }
    WaterStream outflow = chain.outflow();
    for (int month = 0; month < Months.COUNT; month++) {
      supplied[month] += outflow.monthly().get(month).fixedSolidsKg();
    }
    return supplied;
  }

  /** What leaves a bed of something that stays in its water; as many rounds as the bed is run. */
  private static double[] through(BedYear<?> year, double[] comes) {
    double[] leaves = new double[Months.COUNT];
    double kept = 0;
    for (int round = 0; round < year.rounds(); round++) {
      for (int month = 0; month < Months.COUNT; month++) {
        boolean passedBy = year.bed().design().passedBy(month);
        double standing = passedBy ? kept : kept + comes[month];
        double flushed = year.water().flushed()[month];
        leaves[month] = standing * flushed + (passedBy ? comes[month] : 0);
        kept = standing * (1 - flushed);
      }
    }
    return leaves;
  }
}
