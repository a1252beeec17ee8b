package org.marshlight.decision;

import org.marshlight.contract.Months;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.GasPurpose;
import org.marshlight.ethanol.HeatSource;

/**
 * What burned gas does for the household, by month.
 *
 * @param usefulKWh heat in pots and water, light and work
 * @param displacedKWh fuel that would be burned for the same, at net heating value
 */
record GasService(double[] usefulKWh, double[] displacedKWh) {

  static final GasService NONE = new GasService(new double[Months.COUNT], new double[Months.COUNT]);

  /**
   * The service of a tank's gas.
   *
   * @param digester figures of the tank
   * @param efficiencies useful shares
   * @param displaced the fuel that it takes the place of
   */
  static GasService of(
      DigesterEstimate digester, UseEfficiencies efficiencies, HeatSource displaced) {
    double[] useful = new double[Months.COUNT];
    double[] fuel = new double[Months.COUNT];
    for (DigesterEstimate.Use use : digester.gas().uses()) {
      for (int month = 0; month < Months.COUNT; month++) {
        Double met = use.metFraction().get(month);
        if (met != null) {
          double burned = use.demandKWh() * Months.days(month) / Months.DAYS_PER_YEAR * met;
          double served = burned * efficiencies.of(use.use());
          useful[month] += served;
          fuel[month] += inPlaceOf(use.use(), burned, served, displaced);
        }
      }
    }
    return new GasService(useful, fuel);
  }

  /** A lamp or an engine takes as much of the other fuel as of gas. */
  private static double inPlaceOf(
      GasPurpose purpose, double burned, double served, HeatSource displaced) {
    return switch (purpose) {
      case COOKING -> served / displaced.stoveEfficiency();
      case HOT_WATER -> served / displaced.processEfficiency();
      case LAMP, ENGINE -> burned;
      case TANK_HEATING -> 0;
    };
  }

  double annualUsefulKWh() {
    return Months.sum(usefulKWh);
  }

  double annualDisplacedKWh() {
    return Months.sum(displacedKWh);
  }
}
