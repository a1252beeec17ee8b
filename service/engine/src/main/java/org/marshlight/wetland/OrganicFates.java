package org.marshlight.wetland;

import org.marshlight.feed.Matter;

/**
 * Where the organic matter of a bed's water goes in a month. Its COD is a degradable part, which
 * follows BOD5, and an inert part, which only settles.
 *
 * @param leftShare share that stays in the water
 * @param heldShare share that settles for good
 * @param decayedCodKg COD taken apart
 * @param decayedCarbonKg carbon in it
 */
record OrganicFates(
    double leftShare, double heldShare, double decayedCodKg, double decayedCarbonKg) {

  static OrganicFates of(BedSite bed, Carried load, double bod5LeftKg, double solidsLeftKg) {
    Matter matter = load.matter();
    double cod = matter.codKg();
    if (cod <= 0) {
      return new OrganicFates(1, 0, 0, 0);
    }
    double degradable = Math.min(cod, bed.c().degradableCodPerBod5() * load.bod5Kg());
    double inert = cod - degradable;
    double removed = load.bod5Kg() > 0 ? degradable * (1 - bod5LeftKg / load.bod5Kg()) : 0;
    double settled =
        load.solidsKg() > 0
            ? inert * bed.c().settlingInertCod() * (1 - solidsLeftKg / load.solidsKg())
            : 0;
    double held = settled + bed.c().buriedCod() * removed;
    double decayed = (1 - bed.c().buriedCod()) * removed;
    return new OrganicFates(
        1 - (removed + settled) / cod,
        held / cod,
        decayed,
        matter.organicCarbonKg() * decayed / cod);
  }
}
