package org.marshlight.digester;

import org.marshlight.contract.Months;
import org.marshlight.feed.Stoichiometry;

/** What hangs on the temperature of each day of a year. */
final class DigestionRates {

  /** Molar mass of water, kg/kmol. */
  private static final double WATER_KG_KMOL = Stoichiometry.OXYGEN + 2 * Stoichiometry.HYDROGEN;

  /** COD of a kilomole of sulphide, kg, which is that of a kilomole of methane. */
  private static final double SULPHIDE_COD_KG_KMOL = 4 * Stoichiometry.OXYGEN;

  private final Lumps lumps;
  private final DigestionCoefficients coefficients;
  private final double pressurePa;

  /** Share of each lump that is hydrolysed, by day and lump. */
  final double[][] hydrolysed;

  /** Share of acid that is turned to methane where nothing limits it. */
  final double[] acidTurned = new double[Months.DAYS_PER_YEAR];

  /** What can be turned over what can be at 35 Cel. */
  final double[] capacityFactor = new double[Months.DAYS_PER_YEAR];

  /** Methane that leaves dissolved in each m3 of liquor, kg. */
  final double[] saturationKgM3 = new double[Months.DAYS_PER_YEAR];

  /** Vapour that goes with each kg of gas-phase methane's COD, kg. */
  final double[] vapourPerMethaneCod = new double[Months.DAYS_PER_YEAR];

  /** Share of sulphide, for each kg of it in a m3, that goes with a kg of methane's COD, m3/kg. */
  final double[] sulphidePerMethaneCod = new double[Months.DAYS_PER_YEAR];

  /**
   * Rates of a year.
   *
   * @param liquorC temperature of the liquor on each day
   */
  DigestionRates(
      Lumps lumps, DigestionCoefficients coefficients, double pressurePa, double[] liquorC) {
    this.lumps = lumps;
    this.coefficients = coefficients;
    this.pressurePa = pressurePa;
    hydrolysed = new double[Months.DAYS_PER_YEAR][lumps.count];
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      set(day, liquorC[day], 1);
    }
  }

  /**
   * Sets what hangs on a day's temperature.
   *
   * @param adapted how far the sludge is used to its temperatures, 0 to 1
   */
  void set(int day, double temperatureC, double adapted) {
    double arrhenius =
        MethaneKinetics.arrheniusFactor(temperatureC, coefficients.hydrolysisActivation());
    double cold =
        MethaneKinetics.coldCapacity(
            temperatureC, coefficients.coldZero(), coefficients.coldCapacityAtTen());
    if (adapted < 1) {
      double young =
          MethaneKinetics.unadaptedCapacity(
              temperatureC,
              coefficients.unadaptedZero(),
              coefficients.unadaptedCapacityAtTen(),
              coefficients.unadaptedCapacityAtFifteen());
      cold = adapted * cold + (1 - adapted) * young;
    }
    double alive =
        cold
            * MethaneKinetics.overheatedCapacity(
                temperatureC, coefficients.overheatingStarts(), coefficients.overheatingEnds());
    for (int lump = 0; lump < lumps.count; lump++) {
      hydrolysed[day][lump] = MethaneKinetics.plugFlowConversion(lumps.rate35[lump] * arrhenius, 1);
    }
    acidTurned[day] =
        MethaneKinetics.plugFlowConversion(coefficients.acidRate35() * arrhenius * alive, 1);
    capacityFactor[day] = arrhenius * alive;
    saturationKgM3[day] =
        MethaneKinetics.methaneInOutflowMgL(
                MethaneKinetics.dissolvedMethaneMgL(
                    temperatureC, pressurePa * coefficients.methaneFraction()),
                coefficients.oversaturation())
            / 1000;
    double sulphideMolM3 =
        Sulphide.hydrogenSulphideShare(temperatureC, coefficients.liquorPh())
            * 1000
            / SULPHIDE_COD_KG_KMOL;
    sulphidePerMethaneCod[day] =
        Sulphide.partialPressurePa(temperatureC, sulphideMolM3)
            / pressurePa
            / coefficients.methaneFraction();
    double vapourPa =
        1000 * MethaneKinetics.vapourPressureKPa(Math.max(-40, Math.min(59, temperatureC)));
    vapourPerMethaneCod[day] =
        vapourPa
            / (pressurePa - vapourPa)
            * WATER_KG_KMOL
            / Stoichiometry.METHANE
            / Stoichiometry.METHANE_COD
            / coefficients.methaneFraction();
  }
}
