package org.marshlight.digester;

import org.marshlight.feed.Stoichiometry;

/**
 * What a day has turned to methane, kg COD, what came free with it, and how far acid outran what
 * could turn it.
 */
final class MethaneOfDay {

  /** Dry mass of acid for each kg of its COD: acetic acid. */
  static final double ACID_SOLIDS = 60.052 / (4 * Stoichiometry.OXYGEN);

  /** Carbon of methane for each kg of its COD. */
  static final double CARBON_PER_COD = Stoichiometry.METHANE_CARBON / Stoichiometry.METHANE_COD;

  /** Water set free for each kg of acid's COD, and for each kg of its carbon. */
  private static final double WATER_PER_COD =
      Stoichiometry.waterOfOxidationKg(ACID_SOLIDS, 1, 0, 0)
          - Stoichiometry.waterOfOxidationKg(1 / Stoichiometry.METHANE_COD, 1, CARBON_PER_COD, 0);

  private static final double WATER_PER_CARBON = Stoichiometry.waterOfOxidationKg(0, 0, 1, 0);

  double people;
  double other;

  /** Carbon that becomes carbon dioxide. */
  double carbonDioxide;

  /** Greatest of acid that would be turned over what can be. */
  double crowding;

  /** Water set free by all reactions of the day. */
  double water;

  void clear() {
    people = 0;
    other = 0;
    carbonDioxide = 0;
    crowding = 0;
    water = 0;
  }

  double cod() {
    return people + other;
  }

  /**
   * Turns a day's share of an acid to methane.
   *
   * @param ableKg COD that can be turned in the day at the most
   * @param share share of the acid that is turned where there is no such limit
   */
  void turn(Acid acid, double ableKg, double share) {
    double cod = acid.cod();
    double wanted = cod * share;
    if (ableKg > 0) {
      crowding = Math.max(crowding, wanted / ableKg);
    }
    double turned = Math.min(wanted, ableKg);
    if (turned <= 0) {
      return;
    }
    double part = turned / cod;
    double carbon = acid.carbon * part;
    people += acid.people * part;
    other += acid.other * part;
    carbonDioxide += carbon - turned * CARBON_PER_COD;
    water += turned * WATER_PER_COD + carbon * WATER_PER_CARBON;
    acid.keep(1 - part);
  }
}
