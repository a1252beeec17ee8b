package org.marshlight.feed;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;
import org.marshlight.evidence.CoefficientSet;

/** What a feed of the catalogue is made of and how it behaves in a tank. */
@CatalogueRow("feeds")
public record FeedAnalysis(
    @Coefficient("total-solids") double totalSolids,
    @Coefficient("volatile-solids") double volatileSolids,
    @Coefficient("cod-per-volatile-solids") double codPerVolatileSolids,
    @Coefficient("carbon-per-volatile-solids") double carbonPerVolatileSolids,
    @Coefficient("nitrogen-per-total-solids") double nitrogenPerTotalSolids,
    @Coefficient("ammonium-share") double ammoniumShare,
    @Coefficient("phosphorus-per-total-solids") double phosphorusPerTotalSolids,
    @Coefficient("potassium-per-total-solids") double potassiumPerTotalSolids,
    @Coefficient("bod5-per-cod") double bod5PerCod,
    @Coefficient("settled-share") double settledShare,
    @Coefficient("degradable-share") double degradableShare,
    @Coefficient("hydrolysis-rate-35") double hydrolysisRate35PerDay) {

  /** What a feed of a plan is made of: the catalogue's analysis, or its own in place of it. */
  public static FeedAnalysis of(FeedDesign feed, CoefficientSet set) {
    return set.bind(FeedAnalysis.class, feed.feed()).by(feed.analysis());
  }

  /** Matter in a fresh mass of the feed. */
  public Matter matter(double freshKg) {
    double dry = freshKg * totalSolids;
    double organic = dry * volatileSolids;
    double nitrogen = dry * nitrogenPerTotalSolids;
    return new Matter(
        freshKg - dry,
        organic,
        dry - organic,
        organic * codPerVolatileSolids,
        organic * carbonPerVolatileSolids,
        0,
        nitrogen * (1 - ammoniumShare),
        nitrogen * ammoniumShare,
        0,
        dry * phosphorusPerTotalSolids,
        dry * potassiumPerTotalSolids);
  }

  /**
   * The same feed as a laboratory found it.
   *
   * @param given what was found; null if nothing was
   */
  public FeedAnalysis by(LaboratoryAnalysis given) {
    if (given == null) {
      return this;
    }
    double total = given.totalSolidsGKg();
    double organic = given.volatileSolidsGKg();
    double cod = over(given.codGKg(), organic, codPerVolatileSolids);
    double nitrogen = over(given.nitrogenGKg(), total, nitrogenPerTotalSolids);
    return new FeedAnalysis(
        total / 1000,
        organic / total,
        cod,
        over(given.carbonGKg(), organic, carbonPerVolatileSolids),
        nitrogen,
        nitrogen > 0
            ? over(given.ammoniumNitrogenGKg(), nitrogen * total, ammoniumShare)
            : ammoniumShare,
        over(given.phosphorusGKg(), total, phosphorusPerTotalSolids),
        over(given.potassiumGKg(), total, potassiumPerTotalSolids),
        bod5PerCod,
        settledShare,
        over(given.methanePotentialM3Kg(), Stoichiometry.methaneOfCodNm3(cod), degradableShare),
        hydrolysisRate35PerDay);
  }

  private static double over(Double part, double whole, double usual) {
    return part == null ? usual : part / whole;
  }

  /** How it behaves in a tank. */
  public Digestibility digestibility() {
    return new Digestibility(degradableShare, hydrolysisRate35PerDay, settledShare, bod5PerCod);
  }
}
