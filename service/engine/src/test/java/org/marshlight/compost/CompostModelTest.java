package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Account;
import org.marshlight.feed.ClosedBooks;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

class CompostModelTest {

  /** Eghball et al. 1997: manure windrows lost 46 to 62 percent of carbon, 19 to 42 of nitrogen. */
  @Test
  void turnedManureLosesWhatMeasuredWindrowsLost() {
    CompostEstimate.Losses losses =
        Heaps.run(
                Heaps.design(
                    CompostMethod.TURNED_HEAP,
                    Heaps.of("cattle-manure", 4000),
                    Heaps.of("straw", 300)))
            .estimate()
            .losses();
    assertThat(losses.carbonFraction()).isBetween(0.44, 0.62);
    assertThat(losses.nitrogenFraction()).isBetween(0.19, 0.42);
    assertThat(losses.leachedPhosphorusKg()).isPositive();
  }

  /** Household food-waste bins, 2017: dry mass 37 to 61 percent less, never 55 Cel. */
  @Test
  void aBinOfKitchenScrapsLosesWhatMeasuredBinsLostAndStaysLukewarm() {
    CompostOutcome outcome =
        CompostModel.run(
            Heaps.design(CompostMethod.BIN, Heaps.of("kitchen-scraps", 150)),
            List.of(),
            Heaps.WARM,
            Heaps.CENTRAL);
    assertThat(outcome.estimate().losses().dryFraction()).isBetween(0.37, 0.61);
    assertThat(outcome.estimate().hygiene().peakTemperatureC()).isBetween(25.0, 50.0);
    assertThat(outcome.estimate().hygiene().furtherReduction()).isEqualTo(Hygiene.NOT_MET);
  }

  @Test
  void aLargeHeapIsNoCoolerThanASmallOne() {
    double before = -100;
    for (double scale : new double[] {0.02, 0.1, 0.5, 1, 3, 10}) {
      Double peak =
          Heaps.run(
                  Heaps.design(
                      CompostMethod.TURNED_HEAP,
                      Heaps.of("straw", 150 * scale),
                      Heaps.of("grass-clippings", 450 * scale)))
              .estimate()
              .hygiene()
              .peakTemperatureC();
      assertThat(peak).isGreaterThanOrEqualTo(before - 0.5);
      before = peak;
    }
    assertThat(before).isGreaterThan(60);
  }

  @Test
  void freeWaterDrainsAndIsNotAveragedAway() {
    CompostOutcome wet =
        Heaps.run(
            Heaps.design(CompostMethod.TURNED_HEAP), Heaps.loop("still", "stillage", 1000, true));
    assertThat(wet.estimate().mix().drainedWaterKg()).isGreaterThan(500);
    assertThat(wet.estimate().losses().leachedPotassiumKg()).isPositive();
    assertThat(codes(wet)).contains("compost.drains", "compost.airless", "compost.mend");
    CompostOutcome bulked =
        Heaps.run(
            Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("straw", 400)),
            Heaps.loop("still", "stillage", 1000, true));
    assertThat(bulked.estimate().mix().drainedWaterKg()).isZero();
    assertThat(codes(bulked)).doesNotContain("compost.drains");
    ClosedBooks.assertClosed(wet.account());
  }

  @Test
  void aDryHeapStandsStill() {
    CompostOutcome dry = Heaps.run(Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("straw", 300)));
    assertThat(dry.estimate().losses().heatKWh()).isZero();
    assertThat(dry.estimate().losses().carbonFraction()).isZero();
    assertThat(codes(dry)).contains("compost.held-back");
    ClosedBooks.assertClosed(dry.account());
  }

  @Test
  void reaching55CelIsAResultWithARange() {
    CompostEstimate.HygieneFigures small =
        Heaps.run(
                Heaps.design(
                    CompostMethod.STATIC_HEAP,
                    Heaps.of("horse-manure", 150),
                    Heaps.of("straw", 30)))
            .estimate()
            .hygiene();
    CompostEstimate.HygieneFigures large =
        Heaps.run(
                Heaps.design(
                    CompostMethod.STATIC_HEAP,
                    Heaps.of("horse-manure", 15_000),
                    Heaps.of("straw", 3000)))
            .estimate()
            .hygiene();
    for (CompostEstimate.HygieneFigures hygiene : List.of(small, large)) {
      Heaps.assertRangesHoldTheirMiddle(hygiene);
    }
    assertThat(small.peakTemperatureC()).isLessThan(55);
    assertThat(small.above55Days()).isZero();
    assertThat(large.peakTemperatureC()).isGreaterThan(55);
    assertThat(large.peakTemperatureHighC()).isGreaterThan(large.peakTemperatureLowC() + 2);
  }

  @Test
  void humanOriginIsNeverClearedWhateverTheHeat() {
    CompostOutcome outcome =
        CompostModel.run(
            Heaps.design(
                CompostMethod.TURNED_HEAP,
                Heaps.of("cattle-manure", 30_000),
                Heaps.of("straw", 6000)),
            List.of(Heaps.loop("bed-1", "bed-tops", 50, true)),
            Heaps.WARM,
            Heaps.CENTRAL);
    CompostEstimate.HygieneFigures hygiene = outcome.estimate().hygiene();
    assertThat(hygiene.peakTemperatureC()).isGreaterThan(60);
    assertThat(hygiene.humanOrigin()).isTrue();
    assertThat(hygiene.excludedFromFoodEatenRaw()).isTrue();
    assertThat(codes(outcome)).contains("compost.human-origin", "compost.crop-waiting");
  }

  @Test
  void whatALoopGaveElsewhereIsOfHumanOriginUnlessThePlanSaysNot() {
    for (String bought : List.of("septic-sludge", "stillage", "bed-tops", "storage-organs")) {
      assertThat(humanOrigin(new IngredientDesign(bought, 100.0, null))).as(bought).isTrue();
      assertThat(humanOrigin(new IngredientDesign(bought, 100.0, false))).as(bought).isFalse();
    }
    assertThat(humanOrigin(new IngredientDesign("straw", 100.0, null))).isFalse();
    assertThat(humanOrigin(new IngredientDesign("straw", 100.0, true))).isTrue();
  }

  private static boolean humanOrigin(IngredientDesign bought) {
    return Heaps.run(Heaps.design(CompostMethod.BIN, bought)).estimate().hygiene().humanOrigin();
  }

  /** Cooperband 2002: mixes of 40 to 65 percent moisture are acceptable. */
  @Test
  void aHeapOfWetSludgeMeetsNoRuleOnHeatThoughItsModelGetsHot() {
    CompostOutcome outcome =
        Heaps.run(
            Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("straw", 3500)),
            Heaps.loop("tank", "septic-sludge", 20_000, true));
    CompostEstimate.HygieneFigures hygiene = outcome.estimate().hygiene();
    assertThat(outcome.estimate().mix().moistureFraction()).isBetween(0.8, 0.85);
    assertThat(hygiene.peakTemperatureLowC()).isGreaterThan(55);
    assertThat(hygiene.tooWet()).isTrue();
    assertThat(hygiene.significantReduction()).isEqualTo(Hygiene.NOT_MET);
    assertThat(hygiene.furtherReduction()).isEqualTo(Hygiene.NOT_MET);
    assertThat(outcome.notices())
        .filteredOn(notice -> notice.severity() == Notice.Severity.SEVERE)
        .extracting(Notice::code)
        .containsExactly("compost.too-wet");
  }

  @Test
  void coldHumanWasteWantsStorage() {
    CompostEstimate.HygieneFigures hygiene =
        Heaps.run(
                Heaps.design(CompostMethod.STATIC_HEAP, Heaps.of("straw", 100)),
                Heaps.loop("tank", "septic-sludge", 500, true))
            .estimate()
            .hygiene();
    assertThat(hygiene.storageWantingDays()).isEqualTo(730);
    assertThat(hygiene.furtherReduction()).isEqualTo(Hygiene.NOT_MET);
  }

  @Test
  void nothingInTheHeapGivesNoughtsAndANotice() {
    for (CompostDesign design :
        List.of(
            Heaps.design(CompostMethod.BIN),
            new CompostDesign(null, CompostMethod.TURNED_HEAP, 10.0),
            Heaps.design(CompostMethod.STATIC_HEAP, Heaps.of("straw", 0)))) {
      CompostOutcome outcome = Heaps.run(design);
      assertThat(outcome.estimate().annual()).isEqualTo(new CompostEstimate.Annual(0, 0, 0, 0));
      assertThat(codes(outcome)).containsExactly("compost.empty");
      assertNoNaN(outcome);
    }
  }

  @Test
  void waterAloneDrainsToTheLastDrop() {
    CompostOutcome outcome =
        Heaps.run(
            Heaps.design(CompostMethod.TURNED_HEAP),
            new Material("still", "stillage", Matter.water(100), false, 200, 0.5, 4));
    assertThat(outcome.estimate().losses().leachateKg()).isCloseTo(100, within(1e-9));
    assertNoNaN(outcome);
    ClosedBooks.assertClosed(outcome.account());
  }

  @Test
  void ashAloneIsReturnedAsItIs() {
    Matter ash = new Matter(5, 0, 50, 0, 0, 0, 0, 0, 0, 1, 4);
    CompostOutcome outcome =
        Heaps.run(
            Heaps.design(CompostMethod.TURNED_HEAP),
            new Material("bed-1", "bed-tops", ash, false, 500, 0.5, 1));
    assertThat(outcome.estimate().finished().dryKg()).isCloseTo(50, within(1e-9));
    assertNoNaN(outcome);
    ClosedBooks.assertClosed(outcome.account());
  }

  @Test
  void elementsCloseForAnyMix() {
    Random random = new Random(11);
    for (int i = 0; i < 300; i++) {
      CompostOutcome outcome = outcome(random);
      ClosedBooks.assertClosed(outcome.account());
      assertNoNaN(outcome);
      assertThat(outcome.estimate().losses().ammoniaNitrogenKg()).isNotNegative();
      Matter finished = given(outcome, Party.LAND);
      assertThat(finished.waterKg()).isNotNegative();
      assertThat(finished.organicNitrogenKg()).isNotNegative();
      assertThat(finished.volatileSolidsKg()).isNotNegative();
      assertThat(finished.phosphorusKg()).isNotNegative();
    }
  }

  @Test
  void theWorkingCanBeWorkedForEveryIngredientAndMethodInTheCold() {
    CompostSite cold = new CompostSite(Collections.nCopies(12, -40.0));
    for (String id : Catalogues.standard().ids("ingredients")) {
      for (CompostMethod method : CompostMethod.values()) {
        assertThat(
                CompostModel.working(
                    Heaps.design(method, Heaps.of(id, 300)), List.of(), cold, Heaps.CENTRAL))
            .allSatisfy(step -> assertThat(step.value()).isFinite());
      }
    }
  }

  /** A random mix of ingredients whose nature is anywhere that the book allows. */
  private static CompostOutcome outcome(Random random) {
    CoefficientSet set = Heaps.CENTRAL;
    List<String> ids = new ArrayList<>(Catalogues.standard().ids("ingredients"));
    IngredientDesign[] ingredients = new IngredientDesign[1 + random.nextInt(4)];
    for (int i = 0; i < ingredients.length; i++) {
      String id = ids.get(random.nextInt(ids.size()));
      ingredients[i] = Heaps.of(id, 1 + random.nextDouble() * 2000);
      for (String property : List.of("moisture", "nitrogen", "ash", "degradable-share")) {
        CoefficientRow row = set.book().find("ingredients." + id + "." + property).orElseThrow();
        double value = row.least() + random.nextDouble() * (row.most() - row.least());
        set = set.with(Map.of(row.id(), value));
      }
    }
    CompostMethod method = CompostMethod.values()[random.nextInt(3)];
    return CompostModel.run(Heaps.design(method, ingredients), List.of(), Heaps.HILLS, set);
  }

  @Test
  void theHeatIsThatOfTheOxygenTakenUp() {
    CompostOutcome outcome =
        Heaps.run(
            Heaps.design(
                CompostMethod.TURNED_HEAP,
                Heaps.of("straw", 150),
                Heaps.of("grass-clippings", 400)));
    CompostEstimate.Losses losses = outcome.estimate().losses();
    assertThat(given(outcome, Party.OXYGEN).codKg()).isEqualTo(losses.oxygenKg());
    assertThat(losses.heatKWh()).isCloseTo(losses.oxygenKg() * 14.2 / 3.6, within(1e-9));
  }

  @Test
  void theWorkingLeadsToTheFigures() {
    CompostDesign design =
        Heaps.design(
            CompostMethod.TURNED_HEAP, Heaps.of("straw", 150), Heaps.of("grass-clippings", 400));
    CompostEstimate estimate = Heaps.run(design).estimate();
    List<Step> steps = CompostModel.working(design, List.of(), Heaps.HILLS, Heaps.CENTRAL);
    assertThat(steps)
        .filteredOn(step -> step.formula().equals("compost.heat-of-oxygen"))
        .singleElement()
        .satisfies(step -> assertThat(step.value()).isEqualTo(estimate.losses().heatKWh()));
  }

  private static Matter given(CompostOutcome outcome, String party) {
    return Matter.sum(
        outcome.account().gave().stream()
            .filter(entry -> entry.party().equals(party))
            .map(Account.Entry::matter)
            .toList());
  }

  private static List<String> codes(CompostOutcome outcome) {
    return outcome.notices().stream().map(Notice::code).toList();
  }

  private static void assertNoNaN(CompostOutcome outcome) {
    assertThat(outcome.estimate().toString()).doesNotContain("NaN").doesNotContain("Infinity");
  }
}
