package org.marshlight.digester;

import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;

/**
 * The heat balance of lid and liquor, hour by hour, to its periodic year. Two masses are followed:
 * the lid, which takes up the sun, and the liquor. Panes hold no heat. Each hour is a backward step
 * with coefficients of the hour before, so the flows of an hour close exactly.
 */
final class TankHeat {

  private static final double KELVIN = 273.15;
  private static final double HOUR_S = 3600;

  /** Heat capacity of water at the temperatures of tanks, J/(kg.K). */
  static final double WATER_J_KG_K = 4186;

  /** Density of water, kg/m3. */
  static final double WATER_KG_M3 = 1000;

  private static final int MOST_YEARS = 40;

  /** Day from which the year is run once for a start, 1 October. */
  private static final int WARM_UP_FROM_DAY = 273;

  private static final double PERIODIC_K = 1e-5;

  private final ClimateYear year;
  private final Top top;
  private final GroundExchange ground;
  private final AirGap gasSpace;
  private final double gasSpaceFactor;
  private final double planM2;
  private final double lidResistanceM2KW;
  private final double lidWK;
  private final double liquorWK;
  private final double[] inflowWK = new double[Months.COUNT];
  private final double[] inflowC;
  private final int[] monthOfDay = Months.monthOfDay();

  private double lidC;
  private double liquorC;
  private double undersideC;

  /**
   * A tank ready to be run.
   *
   * @param inflowKgDay water that enters on each day of each month
   * @param inflowC its temperature in each month
   */
  TankHeat(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      TankGeometry geometry,
      HeatCoefficients coefficients,
      double[] inflowKgDay,
      double[] inflowC) {
    this.year = year;
    this.gasSpace = new AirGap(coefficients.gasSpaceHeight(), 0);
    this.gasSpaceFactor =
        CoverHeatTransfer.emittanceFactor(
            coefficients.gasSpaceEmittance(), coefficients.gasSpaceEmittance());
    this.inflowC = inflowC;
    this.top =
        switch (cover.kind()) {
          case GLAZED -> new GlazedTop(year, cover, geometry, coefficients);
          case NONE -> new BareTop(year, tank, geometry, coefficients);
          case EARTH -> new EarthTop(year, tank, geometry, coefficients);
        };
    ground = GroundExchange.of(tank, geometry, year.site(), coefficients);
    planM2 = geometry.planAreaM2();
    lidResistanceM2KW = tank.lidResistanceM2KW();
    lidWK = planM2 * coefficients.lidHeatCapacity() * 1000 / HOUR_S;
    liquorWK = geometry.liquidM3() * WATER_KG_M3 * WATER_J_KG_K / HOUR_S;
    for (int month = 0; month < Months.COUNT; month++) {
      inflowWK[month] = inflowKgDay[month] * WATER_J_KG_K / (24 * HOUR_S);
    }
  }

  /**
   * Repeats the year until it ends as it began and its mean liquor temperature is the one that the
   * ground's steady part was given. The last months are run first, for a start near the truth; the
   * mean is then found by Newton's method with the slope of a year of constant conductances.
   */
  HeatYear periodicYear() {
    double guess = Months.mean(year.site().airC());
    lidC = guess;
    liquorC = guess;
    undersideC = guess;
    HeatYear result = run(WARM_UP_FROM_DAY, guess);
    guess += liquorAboveAirK(result);
    double lossWK = ground.internalWK() + Months.mean(inflowWK);
    for (int pass = 0; pass < MOST_YEARS; pass++) {
      double startC = liquorC;
      result = run(0, guess);
      double error = result.meanLiquorC() - guess;
      if (Math.abs(error) < PERIODIC_K && Math.abs(liquorC - startC) < PERIODIC_K) {
        return result;
      }
      guess += error / (1 + (ground.steadyWK() - ground.internalWK()) / lossWK);
    }
    return result;
  }

  /** How much warmer than the air the liquor was over the days of the warm-up. */
  private double liquorAboveAirK(HeatYear warmUp) {
    double sum = 0;
    for (int day = WARM_UP_FROM_DAY; day < Months.DAYS_PER_YEAR; day++) {
      sum += warmUp.dailyLiquorC[day] - year.dailyAirC()[day];
    }
    return sum / (Months.DAYS_PER_YEAR - WARM_UP_FROM_DAY);
  }

  private HeatYear run(int fromDay, double liquorMeanC) {
    HeatYear result = new HeatYear(ground.steadyWK(), ground.standardWK());
    for (int day = fromDay; day < Months.DAYS_PER_YEAR; day++) {
      double groundBaseW = ground.baseLossW(liquorMeanC, day + 0.5);
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        step(hour, monthOfDay[day], groundBaseW, result);
      }
    }
    return result;
  }

  private void step(int hour, int month, double groundBaseW, HeatYear result) {
    top.prepare(hour, month, lidC);
    double upWK = top.conductanceWK();
    double sideWK = top.sideConductanceWK();
    double exchangeWK = planM2 / (lidResistanceM2KW + 1 / gasSpaceWM2K());
    double outflowWK = inflowWK[month];

    double lidSum = lidWK + upWK + sideWK + exchangeWK;
    double liquorSum = liquorWK + exchangeWK + ground.internalWK() + outflowWK;
    double lidDrive =
        lidWK * lidC + top.lidSunW() + upWK * top.environmentC() + sideWK * year.airC()[hour];
    double liquorDrive = liquorWK * liquorC - groundBaseW + outflowWK * inflowC[month];
    double determinant = lidSum * liquorSum - exchangeWK * exchangeWK;
    double newLidC = (lidDrive * liquorSum + exchangeWK * liquorDrive) / determinant;
    double newLiquorC = (lidSum * liquorDrive + exchangeWK * lidDrive) / determinant;

    HeatLedger ledger = result.ledger;
    top.book(newLidC, ledger);
    HeatLedger.add(ledger.ground, month, -groundBaseW - ground.internalWK() * newLiquorC);
    HeatLedger.add(ledger.inflow, month, outflowWK * (inflowC[month] - newLiquorC));
    HeatLedger.add(
        ledger.stored, month, lidWK * (newLidC - lidC) + liquorWK * (newLiquorC - liquorC));
    undersideC = newLidC + exchangeWK * (newLiquorC - newLidC) * lidResistanceM2KW / planM2;
    lidC = newLidC;
    liquorC = newLiquorC;
    result.record(hour, month, liquorC, lidC, top.surfaceC());
  }

  /** Weak when the lid is warmer; strong, with evaporation and condensation, when the liquor is. */
  private double gasSpaceWM2K() {
    double water = liquorC + KELVIN;
    double lid = undersideC + KELVIN;
    double radiation = CoverHeatTransfer.longWave(water, lid, gasSpaceFactor);
    if (water - lid < 1e-6) {
      return radiation + gasSpace.convectionWM2K(water, lid);
    }
    double waterPa = VapourPressureTable.pascal(liquorC);
    double lidPa = VapourPressureTable.pascal(undersideC);
    double convection = CoverHeatTransfer.dunkleConvection(water, lid, waterPa, lidPa);
    return radiation
        + convection
        + CoverHeatTransfer.dunkleEvaporationWM2(convection, waterPa, lidPa) / (water - lid);
  }
}
