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
  final boolean[] human;
  final double[] volatileSolids;
  final double[] carbon;
  final double[] nitrogen;
  final double[] phosphorus;
  final double[] boundWater;

  private Lumps(int count) {
    this.count = count;
    codKgDay = new double[count][Months.COUNT];
    degradableShare = new double[count];
    rate35 = new double[count];
    settledShare = new double[count];
    human = new boolean[count];
    volatileSolids = new double[count];
    carbon = new double[count];
    nitrogen = new double[count];
    phosphorus = new double[count];
    boundWater = new double[count];
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
    human[lump] = waste.human();
    volatileSolids[lump] = annual.volatileSolidsKg() / cod;
    carbon[lump] = annual.organicCarbonKg() / cod;
    nitrogen[lump] = annual.organicNitrogenKg() / cod;
    phosphorus[lump] = coefficients.phosphorusInSolids() * annual.phosphorusKg() / cod;
    boundWater[lump] = Stoichiometry.boundWaterKg(annual) / cod;
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
