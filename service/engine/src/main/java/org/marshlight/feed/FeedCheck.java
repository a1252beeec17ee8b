package org.marshlight.feed;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Sentences;

/** Rules that join several numbers of a feed; each number alone has already been found legal. */
public final class FeedCheck {

  /** Carbon that goes with each kg of COD turned to methane; no matter holds less. */
  static final double LEAST_CARBON_PER_COD =
      Stoichiometry.METHANE_CARBON / Stoichiometry.METHANE_COD;

  /** Acids rich in oxygen lie at the lower end, fats at the upper one. */
  private static final double LEAST_COD_PER_VOLATILE = 0.8;

  private static final double MOST_COD_PER_VOLATILE = 3;

  private FeedCheck() {}

  /**
   * Every fault of a feed.
   *
   * @param catalogue what the catalogue says of it
   * @param pointer where it stands
   */
  public static List<Fault> faults(FeedDesign feed, FeedAnalysis catalogue, String pointer) {
    List<Fault> faults = new ArrayList<>();
    if (feed.analysis() != null) {
      String at = Pointer.child(pointer, "analysis");
      laboratory(feed.analysis(), catalogue, at, faults);
    }
    FeedAnalysis analysis = catalogue.by(feed.analysis());
    double carbonPerCod = analysis.carbonPerVolatileSolids() / analysis.codPerVolatileSolids();
    if (faults.isEmpty() && carbonPerCod < LEAST_CARBON_PER_COD) {
      faults.add(
          Fault.of(
              "feed.too-little-carbon",
              pointer,
              carbonPerCod,
              "at least " + Sentences.number(LEAST_CARBON_PER_COD) + " kg of carbon per kg COD",
              "feed",
              feed.feed(),
              "least",
              LEAST_CARBON_PER_COD));
    }
    return faults;
  }

  private static void laboratory(
      LaboratoryAnalysis given, FeedAnalysis catalogue, String at, List<Fault> faults) {
    double total = given.totalSolidsGKg();
    double organic = given.volatileSolidsGKg();
    if (organic > total) {
      above("feed.volatile-above-total", at, "volatileSolidsGKg", organic, total, faults);
      return;
    }
    if (given.codGKg() != null
        && (given.codGKg() < LEAST_COD_PER_VOLATILE * organic
            || given.codGKg() > MOST_COD_PER_VOLATILE * organic)) {
      faults.add(
          Fault.of(
              "feed.cod-not-of-organics",
              Pointer.child(at, "codGKg"),
              given.codGKg(),
              Sentences.number(LEAST_COD_PER_VOLATILE * organic)
                  + " to "
                  + Sentences.number(MOST_COD_PER_VOLATILE * organic)
                  + " g/kg",
              "volatileGKg",
              organic));
      return;
    }
    FeedAnalysis analysis = catalogue.by(given);
    if (given.carbonGKg() != null && given.carbonGKg() > organic) {
      above("feed.carbon-above-organics", at, "carbonGKg", given.carbonGKg(), organic, faults);
    }
    double nitrogen = analysis.nitrogenPerTotalSolids() * total;
    if (given.ammoniumNitrogenGKg() != null && given.ammoniumNitrogenGKg() > nitrogen) {
      above(
          "feed.ammonium-above-nitrogen",
          at,
          "ammoniumNitrogenGKg",
          given.ammoniumNitrogenGKg(),
          nitrogen,
          faults);
    }
    double nutrients =
        nitrogen
            + (analysis.phosphorusPerTotalSolids() + analysis.potassiumPerTotalSolids()) * total;
    if (nutrients > total) {
      above("feed.nutrients-above-total", at, "totalSolidsGKg", total, nutrients, faults);
    }
    if (analysis.degradableShare() > 1) {
      double most = Stoichiometry.methaneOfCodNm3(analysis.codPerVolatileSolids());
      above(
          "feed.potential-above-cod",
          at,
          "methanePotentialM3Kg",
          given.methanePotentialM3Kg(),
          most,
          faults);
    }
  }

  private static void above(
      String code, String at, String field, double value, double limit, List<Fault> faults) {
    faults.add(
        Fault.of(
            code,
            Pointer.child(at, field),
            value,
            (code.equals("feed.nutrients-above-total") ? "at least " : "at most ")
                + Sentences.number(limit),
            "limit",
            limit));
  }
}
