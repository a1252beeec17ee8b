package org.marshlight.wetland;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;
import org.marshlight.feed.WaterStream;

/**
 * What leaves the last bed, with salts that nothing in a bed binds and no plant wants. They stay
 * where water goes to the air, gather in months without outflow and leave in wetter ones.
 *
 * @param stream the outflow
 * @param saltFactor salts in each month over those of the water that comes to the beds; not a
 *     number in a month without outflow
 */
public record Discharge(WaterStream stream, double[] saltFactor) {

  static Discharge of(BedChain<?> chain) {
    double[] salts = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      salts[month] = chain.inflow().volumeM3(month);
    }
    for (BedYear<?> year : chain.years()) {
      salts = passed(year, salts);
    }
    WaterStream outflow = chain.outflow();
    for (int month = 0; month < Months.COUNT; month++) {
      double volume = outflow.volumeM3(month);
      salts[month] = volume > 0 ? salts[month] / volume : Double.NaN;
    }
    return new Discharge(outflow, salts);
  }

  /** Salts that leave a bed, in volumes of the water that brought them; the year repeats itself. */
  private static double[] passed(BedYear<?> year, double[] inflow) {
    double[] outflow = new double[Months.COUNT];
    double kept = 0;
    for (int step = 0; step < 2 * Months.COUNT; step++) {
      int month = step % Months.COUNT;
      boolean passedBy = year.bed().design().passedBy(month);
      double load = kept + (passedBy ? 0 : inflow[month]);
      double leaves = load * year.water().flushed()[month];
      kept = load - leaves;
      outflow[month] = leaves + (passedBy ? inflow[month] : 0);
    }
    return outflow;
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
      @Argument(symbol = "SAR_0", unit = "1", low = 0, high = 1000) double inflowRatio,
      @Argument(symbol = "f", unit = "1", low = 0, high = 1e6) double saltFactor) {
    return inflowRatio * FastMath.sqrt(saltFactor);
  }
}
