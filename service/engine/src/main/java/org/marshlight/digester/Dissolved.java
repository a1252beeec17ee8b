package org.marshlight.digester;

import org.marshlight.feed.Matter;

/** What is dissolved in the liquor and only passes, or is added to by digestion, kg. */
final class Dissolved {

  double ammoniumNitrogen;
  double phosphorus;
  double potassium;
  double inorganicCarbon;
  double fixedSolids;
  double sulphideCod;

  /**
   * Lets a share of everything leave.
   *
   * @param share share that stays
   * @param into receives what leaves; its own amounts are replaced
   */
  void wash(double share, Dissolved into) {
    into.ammoniumNitrogen = ammoniumNitrogen * (1 - share);
    into.phosphorus = phosphorus * (1 - share);
    into.potassium = potassium * (1 - share);
    into.inorganicCarbon = inorganicCarbon * (1 - share);
    into.fixedSolids = fixedSolids * (1 - share);
    into.sulphideCod = sulphideCod * (1 - share);
    ammoniumNitrogen *= share;
    phosphorus *= share;
    potassium *= share;
    inorganicCarbon *= share;
    fixedSolids *= share;
    sulphideCod *= share;
  }

  /** All of it as numbers that a search may move. */
  double[] state() {
    return new double[] {
      ammoniumNitrogen, phosphorus, potassium, inorganicCarbon, fixedSolids, sulphideCod
    };
  }

  /** Takes all of it from such numbers. */
  void take(double[] state) {
    ammoniumNitrogen = state[0];
    phosphorus = state[1];
    potassium = state[2];
    inorganicCarbon = state[3];
    fixedSolids = state[4];
    sulphideCod = state[5];
  }

  /** All of it as matter. */
  Matter matter() {
    return new Matter(
        0,
        0,
        fixedSolids,
        sulphideCod,
        0,
        inorganicCarbon,
        0,
        ammoniumNitrogen,
        0,
        phosphorus,
        potassium);
  }
}
