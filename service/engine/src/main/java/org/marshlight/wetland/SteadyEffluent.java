package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;
import org.marshlight.feed.WaterStream;

/**
 * Outflow of a tank that is the same on each day, as a plan gives it where no tank is run.
 *
 * @param flowM3Day flow
 * @param temperatureC temperature
 * @param bod5MgL five-day biochemical oxygen demand
 * @param codMgL chemical oxygen demand
 * @param suspendedSolidsMgL suspended solids
 * @param totalNitrogenMgL total nitrogen
 * @param totalPhosphorusMgL total phosphorus
 * @param potassiumMgL potassium
 * @param faecalColiformsPer100ML faecal coliforms in 100 mL
 */
public record SteadyEffluent(
    double flowM3Day,
    double temperatureC,
    double bod5MgL,
    double codMgL,
    double suspendedSolidsMgL,
    double totalNitrogenMgL,
    double totalPhosphorusMgL,
    double potassiumMgL,
    double faecalColiformsPer100ML) {

  private static final double KG_PER_G = 0.001;
  private static final double WATER_KG_M3 = 1000;

  /** The stream, its carbon, ammonium and minerals in the shares usual for septic tanks. */
  public WaterStream stream(CoefficientSet set) {
    EffluentCoefficients c = set.bind(EffluentCoefficients.class);
    List<Matter> monthly = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double volume = flowM3Day * Months.days(month);
      double kg = KG_PER_G * volume;
      bod5[month] = kg * bod5MgL;
      solids[month] = kg * suspendedSolidsMgL;
      monthly.add(
          new Matter(
              WATER_KG_M3 * volume,
              kg * codMgL / c.codPerVolatileSolids(),
              kg * c.fixedSolids(),
              kg * codMgL,
              kg * codMgL * c.carbonPerCod(),
              kg * c.inorganicCarbon(),
              kg * totalNitrogenMgL * (1 - c.ammoniumShare()),
              kg * totalNitrogenMgL * c.ammoniumShare(),
              0,
              kg * totalPhosphorusMgL,
              kg * potassiumMgL));
    }
    return new WaterStream(
        List.copyOf(monthly),
        bod5,
        solids,
        Months.constant(faecalColiformsPer100ML),
        Months.constant(temperatureC),
        true);
  }
}
