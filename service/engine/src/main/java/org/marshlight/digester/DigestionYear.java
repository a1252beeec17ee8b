package org.marshlight.digester;

import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;

/**
 * What a tank gave over its period, as means over the years of the period. Monthly arrays hold kg
 * in the month unless they say otherwise; they must not be changed.
 */
final class DigestionYear {

  final int years;

  /** COD turned to methane, from people's own load and from everything else. */
  final double[] methaneCodPeople = new double[Months.COUNT];

  final double[] methaneCodOther = new double[Months.COUNT];
  final double[] dissolvedMethaneCod = new double[Months.COUNT];

  /** COD of methane that leaves the tank liquid as gas, before leaks. */
  final double[] gasMethaneCod = new double[Months.COUNT];

  final double[] gasCarbonDioxideCarbon = new double[Months.COUNT];
  final double[] sulphideGasCod = new double[Months.COUNT];

  /** COD of gas-phase methane on each day of the period, before leaks. */
  final double[] dailyGasMethaneCod;

  final double[] effluentWater = new double[Months.COUNT];
  final double[] effluentDegradableCod = new double[Months.COUNT];
  final double[] effluentInertCod = new double[Months.COUNT];
  final double[] effluentAcidCod = new double[Months.COUNT];
  final double[] effluentBod5 = new double[Months.COUNT];
  final double[] effluentSulphideCod = new double[Months.COUNT];
  final double[] effluentVolatileSolids = new double[Months.COUNT];
  final double[] effluentParticleSolids = new double[Months.COUNT];
  final double[] effluentFixedSolids = new double[Months.COUNT];
  final double[] effluentCarbon = new double[Months.COUNT];
  final double[] effluentInorganicCarbon = new double[Months.COUNT];
  final double[] effluentOrganicNitrogen = new double[Months.COUNT];
  final double[] effluentAmmonium = new double[Months.COUNT];
  final double[] effluentPhosphorus = new double[Months.COUNT];
  final double[] effluentPotassium = new double[Months.COUNT];

  /** Acid left in the liquor, mean of the month, kg COD/m3. */
  final double[] acidCodKgM3 = new double[Months.COUNT];

  /** Ammonium nitrogen in the liquor, mean of the month, kg/m3. */
  final double[] ammoniumKgM3 = new double[Months.COUNT];

  /** Greatest of acid made over what could be turned to methane, by month. */
  final double[] acidOverCapacity = new double[Months.COUNT];

  final double[] yearMethaneCod;
  final double[] yearSludgeM3;

  Matter pumpedSludge = Matter.NONE;
  Matter kept = Matter.NONE;
  double reactionWater;
  double vapourWater;
  double makeUpWater;
  double greatestSludgeM3;
  double filledDays;

  /** Days from desludging to the first on which solids find no room; infinite if all do. */
  double workableDays = Double.POSITIVE_INFINITY;

  DigestionYear(int years) {
    this.years = years;
    dailyGasMethaneCod = new double[years * Months.DAYS_PER_YEAR];
    yearMethaneCod = new double[years];
    yearSludgeM3 = new double[years];
  }
}
