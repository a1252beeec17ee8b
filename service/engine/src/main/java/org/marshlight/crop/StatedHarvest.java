package org.marshlight.crop;

import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/** A harvest that was weighed or supposed rather than grown here. */
public final class StatedHarvest {

  private StatedHarvest() {}

  /**
   * A lot of stated dry masses; what they are made of is the plant's own.
   *
   * @param from name of the party that brings it
   * @param plant id of a plant of the catalogue
   * @param organsDryKg dry mass of storage organs
   * @param topsDryKg dry mass of tops
   * @param starchFraction starch in the organs' dry mass, as far as there is room for it beside ash
   *     and sugar; null for the plant's own
   * @param set the coefficients
   */
  public static Harvest.Lot lot(
      String from,
      String plant,
      double organsDryKg,
      double topsDryKg,
      Double starchFraction,
      CoefficientSet set) {
    PlantTraits traits = set.bind(PlantTraits.class, plant);
    double starch = starchFraction == null ? traits.organStarch() : starchFraction;
    double room = Tissue.room(traits, starch);
    Tissue tissue = Tissue.of(traits, set.bind(CropCoefficients.class), starch);
    return new Harvest.Lot(
        from,
        plant,
        wet(tissue.organs().times(organsDryKg), organsDryKg, traits.organMoisture()),
        organsDryKg * starch * room,
        organsDryKg * traits.organSugar() * room,
        wet(tissue.tops().times(topsDryKg), topsDryKg, traits.topsMoisture()));
  }

  private static Matter wet(Matter dry, double dryKg, double moisture) {
    return dry.plus(Matter.water(dryKg * moisture / (1 - moisture)));
  }
}
