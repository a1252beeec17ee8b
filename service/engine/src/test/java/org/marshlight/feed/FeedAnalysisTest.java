package org.marshlight.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.contract.Fault;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;

/** A laboratory's analysis stands in for the catalogue's, as far as it goes. */
class FeedAnalysisTest {

  private static final CoefficientSet CENTRAL = CoefficientBook.standard().central();
  private static final String SCRAPS = "kitchen-scraps";

  @Test
  void whatTheLaboratoryFoundIsWhatEntersTheTank() {
    FeedDesign feed =
        scraps(new LaboratoryAnalysis(212.0, 190.0, 281.0, 95.0, 6.1, 0.4, 0.9, 2.2, 0.41));

    Matter matter = FeedAnalysis.of(feed, CENTRAL).matter(1000);

    assertThat(matter.waterKg()).isCloseTo(788, within(1e-9));
    assertThat(matter.volatileSolidsKg()).isCloseTo(190, within(1e-9));
    assertThat(matter.fixedSolidsKg()).isCloseTo(22, within(1e-9));
    assertThat(matter.codKg()).isCloseTo(281, within(1e-9));
    assertThat(matter.organicCarbonKg()).isCloseTo(95, within(1e-9));
    assertThat(matter.organicNitrogenKg()).isCloseTo(5.7, within(1e-9));
    assertThat(matter.ammoniumNitrogenKg()).isCloseTo(0.4, within(1e-9));
    assertThat(matter.phosphorusKg()).isCloseTo(0.9, within(1e-9));
    assertThat(matter.potassiumKg()).isCloseTo(2.2, within(1e-9));
  }

  /** 0.35 m3 of methane at 0 Cel for each kg of COD: a fact of chemistry. */
  @Test
  void potentialOfATestIsAShareOfTheOxygenDemand() {
    FeedDesign feed =
        scraps(new LaboratoryAnalysis(212.0, 190.0, 285.0, null, null, null, null, null, 0.42));

    assertThat(FeedAnalysis.of(feed, CENTRAL).degradableShare())
        .isCloseTo(0.42 / (0.35 * 1.5), within(0.001));
  }

  @Test
  void whatIsNotGivenIsTheCatalogues() {
    FeedAnalysis catalogue = CENTRAL.bind(FeedAnalysis.class, SCRAPS);
    FeedDesign feed =
        scraps(new LaboratoryAnalysis(212.0, 190.0, null, null, null, null, null, null, null));
    FeedAnalysis own = FeedAnalysis.of(feed, CENTRAL);

    assertThat(own.codPerVolatileSolids()).isEqualTo(catalogue.codPerVolatileSolids());
    assertThat(own.nitrogenPerTotalSolids()).isEqualTo(catalogue.nitrogenPerTotalSolids());
    assertThat(own.ammoniumShare()).isEqualTo(catalogue.ammoniumShare());
    assertThat(own.degradableShare()).isEqualTo(catalogue.degradableShare());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "volatile above total, 200, 201, , , , , , , feed.volatile-above-total, volatileSolidsGKg",
    "demand below the organics, 200, 180, 143, , , , , , feed.cod-not-of-organics, codGKg",
    "demand above the organics, 200, 180, 541, , , , , , feed.cod-not-of-organics, codGKg",
    "carbon above the organics, 200, 180, , 181, , , , , feed.carbon-above-organics, carbonGKg",
    "ammonium above nitrogen, 200, 180, , , 5, 6, , , feed.ammonium-above-nitrogen, ammoniumNitrogenGKg",
    "nutrients above solids, 200, 180, , , 190, , 20, , feed.nutrients-above-total, totalSolidsGKg",
    "gas above the demand, 200, 180, 180, , , , , 0.351, feed.potential-above-cod, methanePotentialM3Kg",
    "carbon below the gas, 200, 180, 270, 45, , , , , feed.too-little-carbon, ''"
  })
  void impossibleAnalysesAreRefusedByField(
      String about,
      Double total,
      Double organic,
      Double cod,
      Double carbon,
      Double nitrogen,
      Double ammonium,
      Double phosphorus,
      Double potential,
      String code,
      String field) {
    LaboratoryAnalysis given =
        new LaboratoryAnalysis(
            total, organic, cod, carbon, nitrogen, ammonium, phosphorus, null, potential);

    List<Fault> faults =
        FeedCheck.faults(scraps(given), CENTRAL.bind(FeedAnalysis.class, SCRAPS), "/feeds/0");

    assertThat(faults).extracting(Fault::code).containsExactly(code);
    assertThat(faults.get(0).pointer())
        .isEqualTo(field.isEmpty() ? "/feeds/0" : "/feeds/0/analysis/" + field);
  }

  private static FeedDesign scraps(LaboratoryAnalysis analysis) {
    return new FeedDesign(SCRAPS, 2.0, null, analysis);
  }
}
