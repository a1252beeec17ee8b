package org.marshlight.crop;

import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.Stand;
import org.marshlight.wetland.StandSupply;

/** A plant of the catalogue on one bed. */
public final class CropStand implements Stand<CropGrowth> {

  private static final double KG_PER_G = 0.001;

  private final BedDesign bed;
  private final PlantTraits plant;
  private final CropCoefficients c;
  private final Season season;
  private final Tissue tissue;

  private CropStand(BedDesign bed, PlantTraits plant, CropCoefficients c, Season season) {
    this.bed = bed;
    this.plant = plant;
    this.c = c;
    this.season = season;
    this.tissue = Tissue.of(plant, c);
  }

  /**
   * The stand of a bed.
   *
   * @param bed the bed, with its defaults filled
   * @param year weather of the site
   * @param set the coefficients
   */
  public static CropStand of(BedDesign bed, ClimateYear year, CoefficientSet set) {
    PlantTraits plant = set.bind(PlantTraits.class, bed.plant());
    CropCoefficients c = set.bind(CropCoefficients.class);
    Season season =
        Season.of(
            year, plant, c, bed.coverLightFraction(), bed.harvestMonth(), bed.harvestedFraction());
    return new CropStand(bed, plant, c, season);
  }

  @Override
  public double[] canopy() {
    return season.canopy.clone();
  }

  @Override
  public double smallStandCropCoefficient() {
    return plant.cropCoefficient();
  }

  @Override
  public double methaneKgM2Year() {
    return KG_PER_G * plant.methane();
  }

  @Override
  public CropGrowth grow(StandSupply supply) {
    return grow(supply, bed.harvestedFraction(), bed.harvestedFraction());
  }

  /** The same stand where another share of organs is lifted and another share of tops cut. */
  CropGrowth grow(StandSupply supply, double liftedShare, double cutShare) {
    StandYears years =
        new StandYears(
                season,
                plant,
                c,
                liftedShare,
                cutShare,
                daily(supply.nitrogenKg(), c.availableNitrogen()),
                daily(supply.phosphorusKg(), c.availablePhosphorus()),
                daily(supply.potassiumKg(), c.availablePotassium()),
                supply.waterShare())
            .run();
    return CropGrowth.of(years, plant, c, tissue, season, bed.areaM2());
  }

  private double[] daily(double[] monthlyKg, double available) {
    double[] daily = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      daily[month] = available * monthlyKg[month] / (Months.days(month) * bed.areaM2());
    }
    return daily;
  }

  BedDesign bed() {
    return bed;
  }

  PlantTraits plant() {
    return plant;
  }

  Season season() {
    return season;
  }
}
