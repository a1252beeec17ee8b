package org.marshlight.digester;

import org.marshlight.contract.Months;

/** Water that runs through a tank, and its warmth on coming in, month by month. */
final class Inflow {

  private static final double DAY_S = 86_400;

  private final double[] wattsPerK = new double[Months.COUNT];
  private final double[] temperatureC;

  /**
   * An inflow.
   *
   * @param kgDay water on each day of each month
   * @param temperatureC its temperature in each month
   */
  Inflow(double[] kgDay, double[] temperatureC) {
    this.temperatureC = temperatureC;
    for (int month = 0; month < Months.COUNT; month++) {
      wattsPerK[month] = kgDay[month] * TankHeat.WATER_J_KG_K / DAY_S;
    }
  }

  double wattsPerK(int month) {
    return wattsPerK[month];
  }

  double temperatureC(int month) {
    return temperatureC[month];
  }

  double meanWattsPerK() {
    return Months.mean(wattsPerK);
  }
}
