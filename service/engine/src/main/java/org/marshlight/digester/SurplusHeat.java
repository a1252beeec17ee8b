package org.marshlight.digester;

import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;

/**
 * Warmth and matter of a tank that fit each other: gas that is left over warms the tank, which
 * changes the gas. They are worked again until the heat of each day stands still.
 */
final class SurplusHeat {

  private static final int MOST_ROUNDS = 60;
  private static final double STILL = 1e-7;
  private static final double WATTS_PER_KWH_DAY = 1000.0 / 24;

  private SurplusHeat() {}

  /**
   * Warmth and matter that go together.
   *
   * @param warmth temperatures of the tank
   * @param matter what became of matter in it
   */
  record Round(HeatYear warmth, DigestionYear matter) {}

  /** Works a tank, once where nothing warms it. */
  static Round settle(
      DigesterModel.Inputs inputs,
      TankHeat tank,
      int years,
      double pressureKPa,
      CoefficientSet set) {
    Round result = round(inputs, tank, Heater.NONE, years, pressureKPa, set);
    GasUse warming = inputs.warming();
    if (warming == null) {
      return result;
    }
    double[] available = new double[Months.DAYS_PER_YEAR];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      GasBooks gas = GasBooks.of(inputs, result.warmth(), result.matter(), pressureKPa, set);
      double[] next = available(gas, warming);
      if (stands(available, next)) {
        break;
      }
      available = next;
      Heater heater = new Heater(available, warming.setPointC());
      result = round(inputs, tank, heater, years, pressureKPa, set);
    }
    return result;
  }

  private static Round round(
      DigesterModel.Inputs inputs,
      TankHeat tank,
      Heater heater,
      int years,
      double pressureKPa,
      CoefficientSet set) {
    HeatYear warmth = tank.periodicYear(heater);
    return new Round(
        warmth,
        TankYear.digestion(inputs, warmth.dailyLiquorC, years, pressureKPa, set).periodic());
  }

  private static boolean stands(double[] before, double[] after) {
    double moved = 0;
    double most = 1e-9;
    for (int day = 0; day < after.length; day++) {
      moved = Math.max(moved, Math.abs(after[day] - before[day]));
      most = Math.max(most, after[day]);
    }
    return moved <= STILL * most;
  }

  /** Heat that yesterday's surplus can give on each day, W. */
  private static double[] available(GasBooks gas, GasUse warming) {
    double[] surplus = gas.store().surplusOfDayNm3;
    double[] available = new double[surplus.length];
    double watts =
        MethaneKinetics.methaneEnergyKWh(1) * warming.heatingEfficiency() * WATTS_PER_KWH_DAY;
    for (int day = 0; day < available.length; day++) {
      available[day] = surplus[(day + surplus.length - 1) % surplus.length] * watts;
    }
    return available;
  }
}
