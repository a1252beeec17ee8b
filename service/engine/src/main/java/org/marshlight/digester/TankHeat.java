package org.marshlight.digester;

import java.util.function.IntToDoubleFunction;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.GroundTemperature;
import org.marshlight.contract.Months;

/**
 * The heat balance of lid and liquor, hour by hour, to its periodic year. The lid takes up the sun
 * and holds heat, the liquor holds more; panes hold none. Each step is a backward one with
 * coefficients of the step before, so what is booked in a step closes exactly.
 */
final class TankHeat {

  private static final double KELVIN = 273.15;

  /** Heat capacity of water at the temperatures of tanks, J/(kg.K). */
  static final double WATER_J_KG_K = 4186;

  /** Density of water, kg/m3. */
  private static final double WATER_KG_M3 = 1000;

  private static final int MOST_YEARS = 40;

  /** Length of the steps that only seek where to start. */
  private static final int COARSE_H = 6;

  private static final double PERIODIC_K = 5e-4;

  private final ClimateYear year;
  private final Top top;
  private final GroundExchange ground;
  private final Liquor liquor;
  private final AirGap gasSpace;
  private final double gasSpaceFactor;
  private final double firstYearGroundLoss;
  private final double floorDepthM;
  private final double planM2;
  private final double lidPerPlanKW;
  private final double lidAndScumM2KW;
  private final HeldHeat lid;
  private final HeldHeat whole;
  private final double groundAndInflowWK;
  private final int stepsPerHour;
  private final int[] monthOfDay = Months.monthOfDay();

  private double lidWK;
  private double lidC;
  private double undersideC;
  private double exchangeWK;
  private double newLidC;
  private double newSurfaceC;
  private double heaterShare;
  private double heaterW;
  private Heater heater = Heater.NONE;

  /** A tank ready to be run by the hour. */
  TankHeat(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      TankGeometry geometry,
      HeatCoefficients coefficients,
      Inflow inflow) {
    this(year, tank, cover, geometry, coefficients, inflow, 1);
  }

  /**
   * A tank ready to be run.
   *
   * @param stepsPerHour steps into which an hour is cut; more than one only to see that it matters
   *     little
   */
  TankHeat(
      ClimateYear year,
      TankDesign tank,
      CoverDesign cover,
      TankGeometry geometry,
      HeatCoefficients coefficients,
      Inflow inflow,
      int stepsPerHour) {
    this.year = year;
    this.stepsPerHour = stepsPerHour;
    this.gasSpace = new AirGap(coefficients.gasSpaceHeight(), 0);
    this.gasSpaceFactor =
        CoverHeatTransfer.emittanceFactor(
            coefficients.gasSpaceEmittance(), coefficients.gasSpaceEmittance());
    this.top =
        switch (cover.kind()) {
          case GLAZED -> new GlazedTop(year, cover, geometry, coefficients);
          case NONE -> new BareTop(year, tank, geometry, coefficients);
          case EARTH -> new EarthTop(year, tank, geometry, coefficients);
        };
    ground = GroundExchange.of(tank, geometry, year.site(), coefficients);
    planM2 = geometry.planAreaM2();
    floorDepthM = geometry.floorDepthM();
    lidPerPlanKW = tank.lidResistanceM2KW() / planM2;
    lidAndScumM2KW = tank.lidResistanceM2KW() + tank.scumResistanceM2KW();
    firstYearGroundLoss = coefficients.firstYearGroundLoss();
    lid = HeldHeat.ofJoules(planM2 * coefficients.lidHeatCapacity() * 1000);
    HeldHeat held = HeldHeat.ofJoules(geometry.liquidM3() * WATER_KG_M3 * WATER_J_KG_K);
    whole = new HeldHeat(held.wattHoursPerK() + lid.wattHoursPerK());
    double wallM2 = geometry.perimeterM() * geometry.liquidDepthM();
    liquor =
        tank.liquorLayers() > 1
            ? new LayeredLiquor(
                held,
                ground,
                inflow,
                wallM2 / 2 / (wallM2 + planM2),
                planM2 * coefficients.stableMixing(),
                planM2 * coefficients.turningMixing())
            : new MixedLiquor(held, ground, inflow);
    groundAndInflowWK = ground.internalWK() + inflow.meanWattsPerK();
  }

  /**
   * Repeats the year until it ends as it began and its mean liquor temperature is the one that the
   * ground's steady part was given. A year in long steps is run first, for a start near the truth;
   * the mean is then found by Newton's method with the slope of a year of constant conductances,
   * and the tank is warmed or cooled with it. The first year of full length only leads there and is
   * not told.
   */
  HeatYear periodicYear() {
    return periodicYear(Heater.NONE);
  }

  /**
   * The same with a heater in the liquor.
   *
   * @param liquorHeater the heater
   */
  HeatYear periodicYear(Heater liquorHeater) {
    heater = liquorHeater;
    double guess = Months.mean(year.site().airC());
    start(guess);
    double startC = liquor.meanC;
    Coarse first = coarse(guess);
    double lossWK = groundAndInflowWK + first.throughLidWK();
    double followWK = ground.steadyWK() - ground.internalWK();
    double error = first.meanC() - guess;
    HeatYear result = null;
    for (int pass = 0; pass < MOST_YEARS; pass++) {
      double drift = liquor.meanC - startC;
      if (result != null && Math.abs(error) < PERIODIC_K && Math.abs(drift) < PERIODIC_K) {
        return result;
      }
      double settledError = error + drift * whole.wattHoursPerK() / lossWK / ClimateYear.HOURS;
      double step = settledError / (1 + followWK / lossWK);
      guess += step;
      shift(-step * followWK / lossWK);
      startC = liquor.meanC;
      result = pass == 0 ? null : books();
      error = run(0, Months.DAYS_PER_YEAR, guess, null, result) - guess;
    }
    return result;
  }

  /**
   * The first years of a tank that is filled as cold as the ground at its floor, in ground that is
   * not yet warmed.
   *
   * @param month month in which it is filled, 0 = January
   * @param years how many years to tell
   * @param periodicMeanC mean liquor temperature that the tank comes to in the end
   * @return temperature of the liquor on each day from the first of that month on
   */
  double[] startUp(int month, int years, double periodicMeanC) {
    heater = Heater.NONE;
    int firstDay = Months.firstDay(month);
    start(
        GroundTemperature.temperatureC(
            Math.min(floorDepthM, 50),
            firstDay,
            year.site().ground().meanC(),
            year.site().ground().amplitudeK(),
            year.site().ground().coldestDay(),
            year.site().dampingDepthM()));
    double[] daily = new double[years * Months.DAYS_PER_YEAR];
    int told = 0;
    while (told < daily.length) {
      int from = told == 0 ? firstDay : 0;
      double yearsStood = (double) told / Months.DAYS_PER_YEAR;
      HeatYear part = books();
      run(
          from,
          Months.DAYS_PER_YEAR,
          periodicMeanC,
          day -> youngGround(yearsStood, day, from),
          part);
      for (int day = from; day < Months.DAYS_PER_YEAR && told < daily.length; day++) {
        daily[told++] = part.dailyLiquorC[day];
      }
    }
    return daily;
  }

  private double youngGround(double yearsStood, int day, int from) {
    double age = yearsStood + (double) (day - from) / Months.DAYS_PER_YEAR;
    return 1 + firstYearGroundLoss * FastMath.exp(-age);
  }

  private void start(double temperatureC) {
    lidC = temperatureC;
    undersideC = temperatureC;
    liquor.start(temperatureC);
  }

  private void shift(double kelvin) {
    lidC += kelvin;
    undersideC += kelvin;
    liquor.shift(kelvin);
  }

  private void stepOf(double hours) {
    lidWK = lid.wattsPerK(hours);
    liquor.stepOf(hours);
  }

  /**
   * What a run in long steps tells.
   *
   * @param meanC mean temperature of the liquor
   * @param throughLidWK mean loss of the liquor through lid and top for each kelvin
   */
  private record Coarse(double meanC, double throughLidWK) {}

  private Coarse coarse(double liquorMeanC) {
    stepOf(COARSE_H);
    double liquorSum = 0;
    double lossSum = 0;
    int steps = 0;
    for (int day = 0; day < Months.DAYS_PER_YEAR; day++) {
      double groundBaseW = ground.baseLossW(liquorMeanC, day + 0.5);
      for (int hour = 24 * day + COARSE_H / 2; hour < 24 * day + 24; hour += COARSE_H) {
        step(hour, day, groundBaseW, 1, null);
        double topWK = top.conductanceWK + top.sideConductanceWK;
        liquorSum += liquor.meanC;
        lossSum += exchangeWK * topWK / (exchangeWK + topWK);
        steps++;
      }
    }
    return new Coarse(liquorSum / steps, lossSum / steps);
  }

  private HeatYear books() {
    return new HeatYear(ground.steadyWK(), ground.standardWK(), 1.0 / stepsPerHour);
  }

  /**
   * Runs days of a year on.
   *
   * @param groundFactorOfDay loss to the ground over that of an old tank; null for an old tank
   * @param books where the days are told; null if they are not
   * @return mean temperature of the liquor, Cel
   */
  private double run(
      int fromDay,
      int toDay,
      double liquorMeanC,
      IntToDoubleFunction groundFactorOfDay,
      HeatYear books) {
    stepOf(1.0 / stepsPerHour);
    double liquorSum = 0;
    for (int day = fromDay; day < toDay; day++) {
      double groundBaseW = ground.baseLossW(liquorMeanC, day + 0.5);
      double factor = groundFactorOfDay == null ? 1 : groundFactorOfDay.applyAsDouble(day);
      for (int hour = 24 * day; hour < 24 * day + 24; hour++) {
        for (int step = 0; step < stepsPerHour; step++) {
          step(hour, day, groundBaseW, factor, books);
          liquorSum += liquor.meanC;
        }
      }
    }
    return liquorSum / (24.0 * stepsPerHour * (toDay - fromDay));
  }

  /**
   * Goes on by a step.
   *
   * @param books where the step is told; null if it is not
   */
  private void step(int hour, int day, double groundBaseW, double groundFactor, HeatYear books) {
    int month = monthOfDay[day];
    top.prepare(hour, lidC);
    liquor.prepare(month, groundBaseW, groundFactor);
    balance(hour, day);
    if (books != null) {
      book(month, books.ledger);
      books.heaterSharesOfDay[day] += heaterShare;
    }
    undersideC = newLidC - exchangeWK * (newLidC - newSurfaceC) * lidPerPlanKW;
    lidC = newLidC;
    top.settle(lidC);
    liquor.settle(newSurfaceC);
    if (books != null) {
      top.book(lidC, month, books.ledger);
      books.record(day, month, liquor.meanC, lidC, top.surfaceC);
    }
  }

  /**
   * Solves the two equations of lid and liquor for the end of the step. Both are taken times {@code
   * R h + 1}, by which the exchange between them is divided, so that no division waits for another.
   */
  private void balance(int hour, int day) {
    double gasWM2K = gasSpaceWM2K();
    double perExchange = lidAndScumM2KW * gasWM2K + 1;
    double gasWK = planM2 * gasWM2K;
    exchangeWK = gasWK / perExchange;
    heaterShare = heater.share(liquor.meanC);
    heaterW = heaterShare > 0 ? heaterShare * heater.availableW()[day] : 0;
    double lidOwn = lidWK + top.conductanceWK + top.sideConductanceWK;
    double liquorOwn = liquor.sumWK;
    double lidDrive =
        lidWK * lidC
            + top.lidSunW
            + top.conductanceWK * top.environmentC
            + top.sideConductanceWK * year.airC()[hour];
    double liquorDrive = liquor.driveW + heaterW;
    double perDeterminant = 1 / (lidOwn * liquorOwn * perExchange + gasWK * (lidOwn + liquorOwn));
    double common = gasWK * (lidDrive + liquorDrive);
    newLidC = (lidDrive * (liquorOwn * perExchange) + common) * perDeterminant;
    newSurfaceC = (liquorDrive * (lidOwn * perExchange) + common) * perDeterminant;
  }

  private void book(int month, HeatLedger ledger) {
    liquor.book(newSurfaceC, ledger);
    ledger.add(ledger.stored, month, lidWK * (newLidC - lidC));
    ledger.add(ledger.burnedGas, month, heaterW);
    ledger.add(ledger.lidToLiquor, month, exchangeWK * (newLidC - newSurfaceC));
  }

  /** Weak when the lid is warmer; strong, with evaporation and condensation, when the liquor is. */
  private double gasSpaceWM2K() {
    double water = liquor.surfaceC + KELVIN;
    double under = undersideC + KELVIN;
    double radiation = CoverHeatTransfer.longWave(water, under, gasSpaceFactor);
    if (water - under < 1e-6) {
      return radiation + gasSpace.convectionWM2K(water, under);
    }
    double waterPa = VapourPressureTable.pascal(liquor.surfaceC);
    double lidPa = VapourPressureTable.pascal(undersideC);
    double convection = CoverHeatTransfer.dunkleConvection(water, under, waterPa, lidPa);
    double evaporationPerK =
        CoverHeatTransfer.dunkleEvaporationWM2(1, waterPa, lidPa) / (water - under);
    return radiation + convection * (1 + evaporationPerK);
  }
}
