package org.marshlight.crop;

import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;

/**
 * What a kilogram of a stand's dry matter is made of.
 *
 * @param tops of stems and leaves
 * @param organs of storage organs in autumn, and of the roots beside them
 */
record Tissue(Matter tops, Matter organs) {

  private static final double STARCH_COD = Stoichiometry.theoreticalCodKgKg(6, 10, 5, 0);
  private static final double HEXOSE_COD = Stoichiometry.theoreticalCodKgKg(6, 12, 6, 0);
  private static final double STARCH_CARBON = carbonShare(6, 10, 5);
  private static final double HEXOSE_CARBON = carbonShare(6, 12, 6);

  static Tissue of(PlantTraits plant, CropCoefficients c) {
    return of(plant, c, plant.organStarch());
  }

  /**
   * The tissue of a plant whose organs hold a stated share of starch.
   *
   * @param starch starch in the organs' dry mass
   */
  static Tissue of(PlantTraits plant, CropCoefficients c, double starch) {
    double topsOrganic = 1 - plant.topsAsh();
    double organic = 1 - plant.organAsh();
    double room = room(plant, starch);
    double rest = organic - room * (starch + plant.organSugar());
    return new Tissue(
        new Matter(
            0,
            topsOrganic,
            plant.topsAsh(),
            topsOrganic * c.topsCod(),
            topsOrganic * c.topsCarbon(),
            0,
            plant.topsNitrogen(),
            0,
            0,
            plant.topsPhosphorus(),
            plant.topsPotassium()),
        new Matter(
            0,
            organic,
            plant.organAsh(),
            room * (starch * STARCH_COD + plant.organSugar() * HEXOSE_COD)
                + rest * c.organRestCod(),
            room * (starch * STARCH_CARBON + plant.organSugar() * HEXOSE_CARBON)
                + rest * c.organRestCarbon(),
            0,
            plant.organNitrogen(),
            0,
            0,
            plant.organPhosphorus(),
            plant.organPotassium()));
  }

  /** Starch in the dry mass of organs in autumn. */
  static double starchShare(PlantTraits plant) {
    return plant.organStarch() * room(plant, plant.organStarch());
  }

  /** Free sugar in the dry mass of organs in autumn. */
  static double sugarShare(PlantTraits plant) {
    return plant.organSugar() * room(plant, plant.organStarch());
  }

  /** Starch and sugar, as a plan may state them, cannot fill more than the organic mass. */
  static double room(PlantTraits plant, double starch) {
    return Math.min(1, (1 - plant.organAsh()) / (starch + plant.organSugar()));
  }

  /** Organic matter alone: volatile solids, COD and carbon. */
  static Matter organic(Matter matter) {
    return new Matter(
        0,
        matter.volatileSolidsKg(),
        0,
        matter.codKg(),
        matter.organicCarbonKg(),
        0,
        0,
        0,
        0,
        0,
        0);
  }

  /** Nutrients alone: organic nitrogen, phosphorus and potassium. */
  static Matter nutrients(double nitrogenKg, double phosphorusKg, double potassiumKg) {
    return new Matter(0, 0, 0, 0, 0, 0, nitrogenKg, 0, 0, phosphorusKg, potassiumKg);
  }

  private static double carbonShare(int carbon, int hydrogen, int oxygen) {
    return carbon
        * Stoichiometry.CARBON
        / (carbon * Stoichiometry.CARBON
            + hydrogen * Stoichiometry.HYDROGEN
            + oxygen * Stoichiometry.OXYGEN);
  }
}
