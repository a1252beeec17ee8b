package org.marshlight.crop;

import org.marshlight.contract.Months;
import org.marshlight.feed.Matter;
import org.marshlight.wetland.StandGrowth;

/**
 * The year of a mature stand, kg on the whole bed.
 *
 * @param nitrogenUptakeKg nitrogen taken up in each month
 * @param phosphorusUptakeKg phosphorus taken up in each month
 * @param potassiumUptakeKg potassium taken up in each month
 * @param assimilated organic matter made
 * @param respired organic matter burned by the plants
 * @param litter dead matter and what leaches, with nutrients
 * @param organs storage organs lifted, with their water
 * @param tops tops cut, with their water
 * @param standing what stands more at the year's end
 * @param topsDryKg mean dry mass of tops in each month
 * @param undergroundDryKg mean dry mass of storage organs and roots in each month
 * @param starchKg starch in the organs lifted
 * @param sugarKg free sugar in them
 * @param peakTopsKg greatest dry mass of tops
 * @param undergroundBeforeHarvestKg dry mass below ground when the harvest begins
 * @param growthKg dry matter made
 * @param lost dry matter not made, by what was lacking
 */
public record CropGrowth(
    double[] nitrogenUptakeKg,
    double[] phosphorusUptakeKg,
    double[] potassiumUptakeKg,
    Matter assimilated,
    Matter respired,
    Matter litter,
    Matter organs,
    Matter tops,
    Matter standing,
    double[] topsDryKg,
    double[] undergroundDryKg,
    double starchKg,
    double sugarKg,
    double peakTopsKg,
    double undergroundBeforeHarvestKg,
    double growthKg,
    Lost lost)
    implements StandGrowth {

  /**
   * Dry matter not made, by what was lacking, kg.
   *
   * @param toNitrogenKg where nitrogen was the scarcest
   * @param toPhosphorusKg where phosphorus was
   * @param toPotassiumKg where potassium was
   * @param toWaterKg where the bed had not enough water
   * @param toHarvestKg where the last harvest had left too few reserves, or had cut the leaves
   */
  public record Lost(
      double toNitrogenKg,
      double toPhosphorusKg,
      double toPotassiumKg,
      double toWaterKg,
      double toHarvestKg) {}

  /** The year of a steady stand on an area. */
  static CropGrowth of(
      StandYears y,
      PlantTraits plant,
      CropCoefficients c,
      Tissue tissue,
      Season season,
      double area) {
    double toTops = Months.sum(y.topsGrowth);
    double toOrgans = Months.sum(y.organGrowth);
    double organsLifted = plant.organOfUnderground() * y.lifted;
    double starch = organsLifted * Tissue.starchShare(plant) * season.starchAtHarvest(c);
    return new CropGrowth(
        times(y.nitrogenUptake, area),
        times(y.phosphorusUptake, area),
        times(y.potassiumUptake, area),
        Tissue.organic(tissue.tops().times(toTops).plus(tissue.organs().times(toOrgans)))
            .times(area),
        respired(y, c, tissue).times(area),
        litter(y, plant, c, tissue).times(area),
        wet(tissue.organs().times(organsLifted * area), plant.organMoisture()),
        wet(tissue.tops().times(y.topsCut * area), plant.topsMoisture()),
        tissue
            .tops()
            .times(y.changeOfTops)
            .plus(tissue.organs().times(y.changeOfUnderground))
            .times(area),
        meanOfDays(y.meanTops, area),
        meanOfDays(y.meanUnderground, area),
        starch * area,
        organsLifted * Tissue.sugarShare(plant) * area,
        y.peakTops * area,
        y.undergroundBeforeHarvest * area,
        (toTops + toOrgans) * area,
        new Lost(
            y.lostToNitrogen * area,
            y.lostToPhosphorus * area,
            y.lostToPotassium * area,
            y.lostToWater * area,
            y.lostToHarvest * area));
  }

  /** Organic matter burned in storage, and in turning reserves to tops. */
  private static Matter respired(StandYears y, CropCoefficients c, Tissue tissue) {
    double raised = c.springEfficiency() * y.movedUp;
    double stored = c.storageRespired() * y.storageLost;
    return Tissue.organic(
        tissue.organs().times(y.movedUp + stored).minus(tissue.tops().times(raised)));
  }

  /** Dead tops, organs and roots, what leaches, and the nutrients of what was burned. */
  private static Matter litter(StandYears y, PlantTraits plant, CropCoefficients c, Tissue tissue) {
    Matter burned = tissue.organs().times(c.storageRespired() * y.storageLost);
    double rootsOfLifted = (1 - plant.organOfUnderground()) * y.lifted;
    double dead = (1 - c.storageRespired()) * y.storageLost + y.frostKilled + rootsOfLifted;
    return tissue
        .tops()
        .times(y.topsDied + y.topsLeft)
        .minus(tissue.organs().times(y.topsReturned))
        .plus(tissue.organs().times(dead))
        .plus(burned.minus(Tissue.organic(burned)))
        .plus(Tissue.nutrients(y.leachedNitrogen, y.leachedPhosphorus, y.leachedPotassium));
  }

  private static Matter wet(Matter dry, double moisture) {
    return dry.plus(Matter.water(dry.totalSolidsKg() * moisture / (1 - moisture)));
  }

  private static double[] times(double[] values, double factor) {
    double[] scaled = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      scaled[i] = values[i] * factor;
    }
    return scaled;
  }

  private static double[] meanOfDays(double[] sums, double area) {
    double[] means = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      means[month] = sums[month] * area / Months.days(month);
    }
    return means;
  }
}
