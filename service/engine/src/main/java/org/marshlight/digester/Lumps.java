package org.marshlight.digester;

import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.feed.Digestibility;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.Waste;

/**
 * The wastes of a tank as lumps that are each taken apart at first order: a fast and a slow one for
 * each waste. What is bound in a lump is bound in proportion to its COD. Arrays by lump.
 */
final class Lumps {

  final int count;
  final double[][] codKgDay;
  final double[] degradableShare;
  final double[] rate35;
  final double[] settledShare;

  /** 1 for what people bring themselves, 0 for the rest. */
  final double[] peopleShare;

  /** Five-day oxygen demand of what is degradable and not yet hydrolysed, kg per kg of COD. */
  final double[] degradableBod5;

  /** Five-day oxygen demand of what is not degradable in the tank, kg per kg of COD. */
  final double[] inertBod5;

  final double[] volatileSolids;
  final double[] carbon;
  final double[] nitrogen;
  final double[] phosphorus;

  /** Water set free when a lump is turned to acid, kg for each kg of its COD. */
  final double[] waterToAcid;

  private Lumps(int count) {
    this.count = count;
    codKgDay = new double[count][Months.COUNT];
    degradableShare = new double[count];
    rate35 = new double[count];
    settledShare = new double[count];
    peopleShare = new double[count];
    degradableBod5 = new double[count];
    inertBod5 = new double[count];
    volatileSolids = new double[count];
    carbon = new double[count];
    nitrogen = new double[count];
    phosphorus = new double[count];
    waterToAcid = new double[count];
  }

  static Lumps of(List<Waste> wastes, DigestionCoefficients coefficients) {
    Lumps lumps = new Lumps(2 * wastes.size());
    for (int waste = 0; waste < wastes.size(); waste++) {
      lumps.set(2 * waste, wastes.get(waste), false, coefficients);
      lumps.set(2 * waste + 1, wastes.get(waste), true, coefficients);
    }
    return lumps;
  }

  private void set(int lump, Waste waste, boolean slow, DigestionCoefficients coefficients) {
    Digestibility digestibility = waste.digestibility();
    Matter annual = waste.annual();
    double cod = annual.codKg();
    if (cod <= 0) {
      return;
    }
    double share = codShare(digestibility, slow, coefficients);
    for (int month = 0; month < Months.COUNT; month++) {
      codKgDay[lump][month] = waste.perDay().get(month).codKg() * share;
    }
    degradableShare[lump] = slow ? 1 : fastDegradable(digestibility, coefficients);
    rate35[lump] =
        slow
            ? Math.min(coefficients.slowRate35(), digestibility.hydrolysisRate35PerDay())
            : digestibility.hydrolysisRate35PerDay();
    settledShare[lump] = digestibility.settledShare();
    peopleShare[lump] = waste.human() ? 1 : 0;
    degradableBod5[lump] = digestibility.bod5OfDegradableCod();
    inertBod5[lump] = digestibility.bod5OfInertCod();
    volatileSolids[lump] = annual.volatileSolidsKg() / cod;
    carbon[lump] = annual.organicCarbonKg() / cod;
    nitrogen[lump] = annual.organicNitrogenKg() / cod;
    phosphorus[lump] = coefficients.phosphorusInSolids() * annual.phosphorusKg() / cod;
    waterToAcid[lump] =
        Stoichiometry.boundWaterKg(annual) / cod
            - Stoichiometry.waterOfOxidationKg(MethaneOfDay.ACID_SOLIDS, 1, carbon[lump], 0);
  }

  /**
   * Turns hydrolysed COD to acid and sets free what was bound with it.
   *
   * @param codKg hydrolysed COD of each lump
   * @param acid where the acid goes
   * @param dissolved where nitrogen and phosphorus go
   * @return water set free, kg
   */
  double turnToAcid(double[] codKg, Acid acid, Dissolved dissolved) {
    double all = 0;
    double people = 0;
    double carbonKg = 0;
    double nitrogenKg = 0;
    double phosphorusKg = 0;
    double water = 0;
    for (int lump = 0; lump < count; lump++) {
      double cod = codKg[lump];
      all += cod;
      people += cod * peopleShare[lump];
      carbonKg += cod * carbon[lump];
      nitrogenKg += cod * nitrogen[lump];
      phosphorusKg += cod * phosphorus[lump];
      water += cod * waterToAcid[lump];
    }
    acid.people += people;
    acid.other += all - people;
    acid.carbon += carbonKg;
    dissolved.ammoniumNitrogen += nitrogenKg;
    dissolved.phosphorus += phosphorusKg;
    return water;
  }

  /** Share of a waste's COD in its slow lump (all degradable), or in its fast one. */
  private static double codShare(
      Digestibility digestibility, boolean slow, DigestionCoefficients coefficients) {
    double slowShare = digestibility.degradableShare() * coefficients.slowShare();
    return slow ? slowShare : 1 - slowShare;
  }

  private static double fastDegradable(
      Digestibility digestibility, DigestionCoefficients coefficients) {
    double fast = digestibility.degradableShare() * (1 - coefficients.slowShare());
    double share = codShare(digestibility, false, coefficients);
    return share > 0 ? fast / share : 0;
  }
}
