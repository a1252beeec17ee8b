package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.crop.Harvest;
import org.marshlight.crop.StatedHarvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.feed.WaterStream;

/** Turns what a plan gives in place of upstream stages into the streams that those would give. */
final class GivenStreams {

  /** Name under which given streams stand in the books. */
  static final String PARTY = "given";

  private static final double KG_PER_M3_OF_MG_L = 1e-3;

  private GivenStreams() {}

  /** Outflow of a tank of stated concentrations, the same on every day. */
  static WaterStream effluent(GivenDesign.Effluent given, CoefficientSet set) {
    EffluentCoefficients usual = set.bind(EffluentCoefficients.class);
    List<Matter> monthly = new ArrayList<>(Months.COUNT);
    double[] bod5 = new double[Months.COUNT];
    double[] solids = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      double volume = given.flowM3Day() * Months.days(month);
      double kg = volume * KG_PER_M3_OF_MG_L;
      double cod = kg * given.codMgL();
      double nitrogen = kg * given.totalNitrogenMgL();
      double ammonium = nitrogen * usual.ammoniumShare();
      bod5[month] = kg * given.bod5MgL();
      solids[month] = kg * given.suspendedSolidsMgL();
      monthly.add(
          new Matter(
              volume * 1000,
              cod / usual.codPerVolatileSolids(),
              kg * Math.max(0, given.dissolvedSolidsMgL() - usual.suppliedMinerals()),
              cod,
              cod * usual.carbonPerCod(),
              ammonium * Stoichiometry.CARBON / Stoichiometry.NITROGEN,
              nitrogen - ammonium,
              ammonium,
              0,
              kg * given.totalPhosphorusMgL(),
              kg * given.potassiumMgL()));
    }
    return new WaterStream(
        List.copyOf(monthly),
        bod5,
        solids,
        Months.constant(given.faecalColiformsPer100ML()),
        Months.constant(given.temperatureC()),
        true);
  }

  /** A harvest of stated dry masses. */
  static Harvest harvest(GivenDesign.Harvest given, CoefficientSet set) {
    return new Harvest(
        List.of(
            StatedHarvest.lot(
                PARTY,
                given.plant(),
                given.storageOrganDryKg(),
                given.topsDryKg() == null ? 0 : given.topsDryKg(),
                given.starchFraction(),
                set)));
  }

  /** Stillage of stated analysis; its organic matter is that of starch stillage. */
  static Matter stillage(GivenDesign.Stillage given, CoefficientSet set) {
    FeedAnalysis usual = set.bind(FeedAnalysis.class, "stillage");
    double dry = given.freshKg() * given.totalSolidsFraction();
    double organic = dry * usual.volatileSolids();
    double nitrogen = dry * given.nitrogenFraction();
    return new Matter(
        given.freshKg() - dry,
        organic,
        dry - organic,
        organic * usual.codPerVolatileSolids(),
        organic * usual.carbonPerVolatileSolids(),
        0,
        nitrogen * (1 - usual.ammoniumShare()),
        nitrogen * usual.ammoniumShare(),
        0,
        dry * given.phosphorusFraction(),
        dry * given.potassiumFraction());
  }
}
