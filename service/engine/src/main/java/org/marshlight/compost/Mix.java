package org.marshlight.compost;

import java.util.List;
import org.marshlight.feed.Matter;

/**
 * A year's materials put together, before anything decays. Water beyond what they hold drains at
 * once and takes dissolved matter with it; it is never averaged away.
 *
 * @param materials what goes in
 * @param whole all of it
 * @param holdsKg water that it can hold
 * @param drained what drains
 * @param volumeM3 room that it takes
 */
record Mix(
    List<Material> materials, Matter whole, double holdsKg, Matter drained, double volumeM3) {

  static Mix of(List<Material> materials, MixCoefficients c) {
    List<Material> present =
        materials.stream().filter(material -> material.matter().freshKg() > 0).toList();
    Matter whole = Matter.sum(present.stream().map(Material::matter).toList());
    double holds = present.stream().mapToDouble(Material::holdsKg).sum();
    double volume = present.stream().mapToDouble(Material::volumeM3).sum();
    return new Mix(present, whole, holds, drained(whole, holds, c), volume);
  }

  private static Matter drained(Matter whole, double holdsKg, MixCoefficients c) {
    double free = Math.max(0, whole.waterKg() - holdsKg);
    if (free <= 0) {
      return Matter.NONE;
    }
    double share = free / whole.waterKg();
    double organics = share * c.solubleOrganics();
    double ammonium = share * c.solubleAmmonium();
    return new Matter(
        free,
        whole.volatileSolidsKg() * organics,
        whole.fixedSolidsKg() * share * c.solubleMinerals(),
        whole.codKg() * organics,
        whole.organicCarbonKg() * organics,
        whole.inorganicCarbonKg() * share,
        whole.organicNitrogenKg() * organics,
        whole.ammoniumNitrogenKg() * ammonium,
        whole.nitrateNitrogenKg() * ammonium,
        whole.phosphorusKg() * share * c.solublePhosphorus(),
        whole.potassiumKg() * share * c.solublePotassium());
  }

  /** Whether there is no dry matter, so that no heap can stand. */
  boolean empty() {
    return whole.totalSolidsKg() <= 0;
  }

  boolean humanOrigin() {
    return materials.stream().anyMatch(Material::humanOrigin);
  }

  /** What is in the heap once it has drained. */
  Matter moist() {
    return whole.minus(drained);
  }

  /** Share of the organic matter that is left when it has drained. */
  double organicsLeft() {
    return whole.volatileSolidsKg() <= 0
        ? 1
        : 1 - drained.volatileSolidsKg() / whole.volatileSolidsKg();
  }

  /** Moisture of the drained mix; nought if nothing is left. */
  double moisture() {
    Matter moist = moist();
    return moist.freshKg() > 0 ? moist.waterKg() / moist.freshKg() : 0;
  }

  /** Carbon to nitrogen of the drained mix; infinite without nitrogen. */
  double carbonToNitrogen() {
    return ratio(moist());
  }

  /** Bulk density of the drained mix, kg/m3; nought if it takes no room. */
  double bulkDensityKgM3() {
    return volumeM3 > 0 ? moist().freshKg() / volumeM3 : 0;
  }

  /** Share of the drained mix's volume that is air. */
  double freeAirSpace() {
    return Mixing.freeAirSpace(bulkDensityKgM3());
  }

  /** Organic carbon to nitrogen; infinite without nitrogen. */
  static double ratio(Matter matter) {
    return matter.nitrogenKg() > 0
        ? matter.organicCarbonKg() / matter.nitrogenKg()
        : Double.POSITIVE_INFINITY;
  }
}
