package org.marshlight.decision;

import org.marshlight.contract.Months;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.ethanol.HeatSource;

/**
 * What burned gas does for the household, by month, and what would be spent on the same service
 * without it: fuel on a stove or under a kettle, electricity in a lamp or from the grid.
 *
 * @param usefulKWh heat in pots and water, light and work
 * @param displacedFuelKWh displaced fuel that would be burned for the same heat, at net heating
 *     value
 * @param displacedElectricityKWh electricity that lamps would take for the same light, and that the
 *     generators of engines give
 */
record GasService(double[] usefulKWh, double[] displacedFuelKWh, double[] displacedElectricityKWh) {

  static final GasService NONE =
      new GasService(new double[Months.COUNT], new double[Months.COUNT], new double[Months.COUNT]);

  /**
   * The service of a tank's gas.
   *
   * @param digester figures of the tank
   * @param efficiencies useful shares
   * @param displaced the fuel whose place it takes on stoves and under kettles
   */
  static GasService of(
      DigesterEstimate digester, UseEfficiencies efficiencies, HeatSource displaced) {
    double[] useful = new double[Months.COUNT];
    double[] fuel = new double[Months.COUNT];
    double[] electricity = new double[Months.COUNT];
    for (DigesterEstimate.Use use : digester.gas().uses()) {
      for (int month = 0; month < Months.COUNT; month++) {
        Double met = use.metFraction().get(month);
        if (met != null) {
          double burned = use.demandKWh() * Months.days(month) / Months.DAYS_PER_YEAR * met;
          double served = burned * efficiencies.of(use.use());
          useful[month] += served;
          switch (use.use()) {
            case COOKING -> fuel[month] += served / displaced.stoveEfficiency();
            case HOT_WATER -> fuel[month] += served / displaced.processEfficiency();
            case LAMP, ENGINE ->
                electricity[month] += burned * efficiencies.electricityFor(use.use());
            case TANK_HEATING -> {}
          }
        }
      }
    }
    return new GasService(useful, fuel, electricity);
  }

  double annualUsefulKWh() {
    return Months.sum(usefulKWh);
  }

  double annualDisplacedFuelKWh() {
    return Months.sum(displacedFuelKWh);
  }

  double annualDisplacedElectricityKWh() {
    return Months.sum(displacedElectricityKWh);
  }

  /** Whether it takes the place of electricity and of no fuel. */
  boolean sparesElectricityAlone() {
    return annualDisplacedFuelKWh() <= 0 && annualDisplacedElectricityKWh() > 0;
  }
}
