package org.marshlight.ethanol;

import org.marshlight.evidence.CoefficientSet;

/**
 * Mash tun, still and fire: what a beer gives and what it costs in heat.
 *
 * @param still the still, with all its defaults
 * @param source where the heat comes from
 * @param electricity where power for chopping and pumping comes from
 * @param c numbers of mash and still
 * @param pressureKPa pressure of the air, under which they boil
 */
record Distillery(
    StillDesign still,
    HeatSource source,
    HeatSource electricity,
    EthanolCoefficients c,
    double pressureKPa) {

  private static final double MJ_PER_KWH = 3.6;

  static Distillery of(FuelDesign fuel, StillDesign still, CoefficientSet set, double pressureKPa) {
    return new Distillery(
        still,
        set.bind(HeatSource.class, fuel.heat()),
        set.bind(HeatSource.class, HeatSource.ELECTRICITY),
        set.bind(EthanolCoefficients.class),
        pressureKPa);
  }

  /**
   * A year's distilling.
   *
   * @param beer what is distilled
   * @param electricityKWh electricity bought for chopping and pumping
   */
  Distilling run(Beer beer, double electricityKWh) {
    Separation separation = separate(beer);
    double mash = mashKWh(beer);
    double reused = mash * c.mashHeatReused();
    double net =
        mash - reused + separation.feedKWh() - separation.recoveredKWh() + separation.boilUpKWh();
    double process = net * (1 + c.vesselLoss());
    double kept = 1 - c.vapourLoss();
    double ethanol = separation.ethanolKg() * kept;
    double water = separation.waterKg() * kept;
    double fuel = fuelKWh(ethanol, water);
    double fired = process / source.processEfficiency();
    double spent = fired * source.primaryEnergy() + electricityKWh * electricity.primaryEnergy();
    return new Distilling(
        separation, ethanol, water, mash, reused, process - net, process, fired, spent, fuel);
  }

  private Separation separate(Beer beer) {
    if (beer.ethanolKg() <= 0) {
      return Separation.none(beer);
    }
    return still.kind() == StillKind.POT
        ? PotStill.distil(beer, still.runs(), still.feedHeatRecoveredFraction(), c, pressureKPa)
        : ColumnStill.distil(
            beer,
            still.theoreticalPlates(),
            still.refluxRatio(),
            still.feedHeatRecoveredFraction(),
            c,
            pressureKPa);
  }

  private double mashKWh(Beer beer) {
    double from = c.waterTemperatureC();
    double to = mashTemperatureC();
    return DistillingHeat.sensibleKWh(beer.mashWaterKg(), c.heatCapacityOfWater(), from, to)
        + DistillingHeat.sensibleKWh(beer.mashSolidsKg(), c.heatCapacityOfSolids(), from, to);
  }

  /** Temperature to which the mash is brought: no open mash gets hotter than water boils. */
  double mashTemperatureC() {
    return Math.min(
        c.mashTemperatureC(), EthanolWaterEquilibrium.bubbleTemperatureC(0, pressureKPa));
  }

  /** Net heating value of the product; nought where its water takes more than it gives. */
  private double fuelKWh(double ethanolKg, double waterKg) {
    double product = ethanolKg + waterKg;
    if (product <= 0) {
      return 0;
    }
    double heatingValue =
        FuelProperties.heatingValueMJKg(
            ethanolKg / product, c.netHeatingValueMJKg(), c.waterEvaporationMJKg());
    return Math.max(0, product * heatingValue / MJ_PER_KWH);
  }
}
