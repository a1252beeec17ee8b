package org.marshlight.feed;

import org.marshlight.evidence.CatalogueRow;
import org.marshlight.evidence.Coefficient;

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

  /** How it behaves in a tank. */
  public Digestibility digestibility() {
    return new Digestibility(degradableShare, hydrolysisRate35PerDay, settledShare, bod5PerCod);
  }
}
