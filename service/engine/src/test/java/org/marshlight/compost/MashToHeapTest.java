package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.crop.Harvest;
import org.marshlight.ethanol.EthanolModel;
import org.marshlight.ethanol.EthanolOutcome;
import org.marshlight.ethanol.FuelDesign;
import org.marshlight.ethanol.MashRoute;
import org.marshlight.ethanol.StillDesign;
import org.marshlight.ethanol.StillKind;
import org.marshlight.feed.Account;
import org.marshlight.feed.ClosedBooks;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;

/** From the organs of a bed that cleans sewage through still and heap to the land. */
class MashToHeapTest {

  /** Rhizomes of an invented bed: 40 kg dry, three quarters water, a third starch. */
  private static final Matter RHIZOMES = new Matter(120, 37, 3, 45, 17, 0, 0.48, 0, 0, 0.1, 0.8);

  private static final EthanolOutcome STILL =
      EthanolModel.run(
          new FuelDesign(1.0, MashRoute.ENZYME, null, "firewood"),
          new StillDesign(StillKind.POT, 10.0, 3.0, 2, 0.0, null),
          new Harvest(
              List.of(
                  new Harvest.Lot("bed-1", "broadleaf-cattail", RHIZOMES, 14, 0.6, Matter.NONE))),
          Heaps.CENTRAL,
          true,
          Party.HEAP,
          101.325);

  private static final CompostOutcome HEAP =
      CompostModel.run(
          Heaps.design(CompostMethod.TURNED_HEAP, Heaps.of("straw", 120)),
          List.of(
              Material.ofLoop(
                  Party.STILL, "stillage", STILL.stillage(), STILL.humanOrigin(), Heaps.CENTRAL)),
          Heaps.HILLS,
          Heaps.CENTRAL);

  @Test
  void nitrogenPhosphorusPotassiumAndCarbonCloseThroughMashStillStillageAndHeap() {
    ClosedBooks.assertClosed(STILL.account());
    ClosedBooks.assertClosed(HEAP.account());
    closes(Matter::nitrogenKg);
    closes(Matter::phosphorusKg);
    closes(Matter::potassiumKg);
    closes(Matter::carbonKg);
  }

  /** What both processes got of all others is what they gave to all others. */
  private static void closes(ToDoubleFunction<Matter> quantity) {
    double in = 0;
    double out = 0;
    for (Account account : List.of(STILL.account(), HEAP.account())) {
      in += sum(account.received(), quantity);
      out += sum(account.gave(), quantity) + quantity.applyAsDouble(account.kept());
    }
    assertThat(out).isCloseTo(in, within(1e-9 * in));
  }

  private static double sum(List<Account.Entry> entries, ToDoubleFunction<Matter> quantity) {
    double sum = 0;
    for (Account.Entry entry : entries) {
      boolean between = entry.party().equals(Party.HEAP) || entry.party().equals(Party.STILL);
      sum += between ? 0 : quantity.applyAsDouble(entry.matter());
    }
    return sum;
  }

  /** All phosphorus and potassium of the rhizomes reach the land, but for what rain washes out. */
  @Test
  void nearlyAllPhosphorusAndPotassiumComeBack() {
    Matter land = Matter.NONE;
    for (Account.Entry entry : HEAP.account().gave()) {
      land = entry.party().equals(Party.LAND) ? land.plus(entry.matter()) : land;
    }
    assertThat(land.phosphorusKg()).isGreaterThan(0.95 * RHIZOMES.phosphorusKg());
    assertThat(land.potassiumKg()).isGreaterThan(0.9 * RHIZOMES.potassiumKg());
  }

  @Test
  void humanOriginIsCarriedFromTheBedThroughStillAndHeapAndNeverClearedForFoodEatenRaw() {
    assertThat(STILL.humanOrigin()).isTrue();
    CompostEstimate.HygieneFigures hygiene = HEAP.estimate().hygiene();
    assertThat(hygiene.humanOrigin()).isTrue();
    assertThat(hygiene.excludedFromFoodEatenRaw()).isTrue();
    assertThat(hygiene.heatWantingDays() > 0 || hygiene.storageWantingDays() > 0).isTrue();
    List<String> codes = new ArrayList<>();
    STILL.notices().forEach(notice -> codes.add(notice.code()));
    HEAP.notices().forEach(notice -> codes.add(notice.code()));
    assertThat(codes).contains("ethanol.human-origin", "compost.human-origin");
  }

  /** Whether 55 Cel is reached is a result with a range that holds its middle. */
  @Test
  void fiftyFiveDegreesIsAResultWithARange() {
    for (double scale : new double[] {0.05, 1, 20}) {
      CompostEstimate.HygieneFigures hygiene =
          Heaps.run(
                  Heaps.design(
                      CompostMethod.TURNED_HEAP,
                      Heaps.of("straw", 150 * scale),
                      Heaps.of("grass-clippings", 450 * scale)))
              .estimate()
              .hygiene();
      Heaps.assertRangesHoldTheirMiddle(hygiene);
    }
  }
}
