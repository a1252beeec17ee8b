package org.marshlight.digester;

import java.util.List;
import org.marshlight.climate.ReferenceEvapotranspiration;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;

/**
 * Warmth, matter and gas of a tank that go together. Where gas left over warms the tank, the three
 * are worked again until the heat of each day stands still.
 *
 * @param heat the tank that was run, for its first years
 * @param warmth its temperatures
 * @param matter what became of matter in it
 * @param gas its gas
 */
record TankYear(TankHeat heat, HeatYear warmth, DigestionYear matter, GasBooks gas) {

  private static final int MOST_ROUNDS = 60;
  private static final double STILL = 1e-7;
  private static final double WATTS_PER_KWH_DAY = 1000.0 / 24;

  /**
   * Works a tank.
   *
   * @param tank the tank, which may differ from that of the inputs in its insulation
   * @param warming the use that warms it; null for none
   */
  static TankYear of(
      DigesterModel.Inputs inputs,
      TankDesign tank,
      TankGeometry geometry,
      CoverDesign cover,
      Inflow inflow,
      int years,
      GasUse warming,
      CoefficientSet set) {
    TankHeat heat =
        new TankHeat(
            inputs.year(), tank, cover, geometry, set.bind(HeatCoefficients.class), inflow);
    TankYear result = round(inputs, heat, Heater.NONE, years, set);
    if (warming == null) {
      return result;
    }
    double[] available = new double[Months.DAYS_PER_YEAR];
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] next = available(result.gas(), warming);
      double moved = 0;
      double most = 1e-9;
      for (int day = 0; day < next.length; day++) {
        moved = Math.max(moved, Math.abs(next[day] - available[day]));
        most = Math.max(most, next[day]);
      }
      if (moved <= STILL * most) {
        break;
      }
      available = next;
      result = round(inputs, heat, new Heater(available, warming.setPointC()), years, set);
    }
    return result;
  }

  private static TankYear round(
      DigesterModel.Inputs inputs, TankHeat heat, Heater heater, int years, CoefficientSet set) {
    double pressureKPa =
        ReferenceEvapotranspiration.atmosphericPressureKPa(inputs.year().site().elevationM());
    DigestionCoefficients coefficients = set.bind(DigestionCoefficients.class);
    HeatYear warmth = heat.periodicYear(heater);
    DigestionYear matter =
        digestion(inputs, warmth.dailyLiquorC, years, pressureKPa, coefficients).periodic();
    return new TankYear(
        heat, warmth, matter, GasBooks.of(inputs, warmth, matter, coefficients, set, pressureKPa));
  }

  /** A tank's matter, ready to be run. */
  static Digestion digestion(
      DigesterModel.Inputs inputs,
      double[] liquorC,
      int years,
      double pressureKPa,
      DigestionCoefficients coefficients) {
    return new Digestion(
        inputs.wastes(),
        inputs.tank().liquidVolumeM3(),
        inputs.tank().compartments(),
        liquorC,
        years,
        inputs.tank().desludgingMonth() - 1,
        pressureKPa,
        coefficients);
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

  /** The use that warms the tank, or null. */
  static GasUse warming(GasDesign gas) {
    List<GasUse> uses = gas == null || gas.uses() == null ? List.of() : gas.uses();
    return uses.stream()
        .filter(use -> use.use() == GasPurpose.TANK_HEATING)
        .findFirst()
        .orElse(null);
  }
}
