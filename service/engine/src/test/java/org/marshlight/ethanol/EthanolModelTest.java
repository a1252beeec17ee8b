package org.marshlight.ethanol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Notice;
import org.marshlight.crop.Harvest;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Step;
import org.marshlight.feed.ClosedBooks;
import org.marshlight.feed.Matter;

class EthanolModelTest {

  /** Directive 2018/2002 of the European Union, default coefficient of electricity. */
  private static final double EU_ELECTRICITY = 2.1;

  private static final double SEA_LEVEL = EthanolWaterEquilibrium.STANDARD_KPA;

  private static final Harvest CATTAIL =
      Stills.harvest(Stills.lot("broadleaf-cattail", 15, 0.75, 0.38));

  /** A mash like that of potatoes: a fifth of the fresh mass starch, little water added. */
  private static final Harvest TUBERS = Stills.harvest(Stills.lot("taro", 100, 0.77, 0.82));

  private static final CoefficientSet STIFF_MASH =
      Stills.CENTRAL.with(Map.of("plants.taro.mash-water", 4.7));

  /**
   * Gabrielson 1982 (US DOE, cattail rhizome alcohol): beer of 2 percent or less, and conventional
   * distilling would take much more energy than burning the alcohol gives.
   */
  @Test
  void aCattailMashOfAboutTwoPercentCostsMoreHeatThanItHolds() {
    for (String heat : List.of("firewood", "wood-pellets", "lpg", "electricity")) {
      for (StillDesign still :
          List.of(
              Stills.pot(1), Stills.pot(2), Stills.column(20, 14, 0), Stills.column(9, 3, 0.7))) {
        EthanolOutcome outcome = Stills.run(Stills.fuel(MashRoute.ENZYME, heat), still, CATTAIL);
        EthanolEstimate estimate = outcome.estimate();
        assertThat(estimate.mash().beerStrengthPercentVol()).isBetween(1.2, 2.6);
        assertThat(estimate.annual().processHeatKWh())
            .isGreaterThan(estimate.annual().fuelEnergyKWh());
        assertThat(estimate.annual().netEnergyKWh()).isNegative();
        assertThat(codes(outcome)).contains("ethanol.costs-more-than-it-holds");
      }
    }
  }

  /** Where beer, column, exchanger and boiler are good, fuel alcohol is worth its heat. */
  @Test
  void aPotatoMashOfNinePercentComesOutAheadWithAGoodColumnHeatRecoveryAndABoiler() {
    EthanolEstimate estimate = tubers("wood-pellets", Stills.column(15, 3.5, 0.7));
    assertThat(estimate.mash().beerStrengthPercentVol()).isCloseTo(9, within(0.4));
    assertThat(estimate.still().productStrengthPercentVol()).isGreaterThan(92);
    assertThat(estimate.annual().netEnergyKWh()).isPositive();
    assertThat(estimate.heat().energyRatio()).isGreaterThan(1.3);
    assertThat(estimate.mash().breakEvenStrengthPercentVol()).isBetween(3.0, 7.0);
  }

  /** A year's mash is fuel, or methane, or compost: each tells of the same organs. */
  @Test
  void theSameMashWouldGiveMoreAsMethaneAndKeepItsMineralsAsCompost() {
    EthanolOutcome outcome =
        Stills.run(
            Stills.fuel(MashRoute.ENZYME, "wood-pellets"), Stills.column(15, 3.5, 0.7), TUBERS);
    EthanolEstimate.Instead instead = outcome.estimate().instead();
    Matter organs = outcome.account().received().get(0).matter();
    assertThat(instead.methaneNm3()).isLessThanOrEqualTo(0.3503 * organs.codKg());
    assertThat(instead.methaneEnergyKWh() / instead.methaneNm3()).isCloseTo(9.9467, within(1e-3));
    assertThat(instead.methaneEnergyKWh())
        .isGreaterThan(outcome.estimate().annual().netEnergyKWh());
    assertThat(instead.compostPhosphorusKg()).isEqualTo(organs.phosphorusKg());
    assertThat(instead.compostPotassiumKg()).isEqualTo(organs.potassiumKg());
    assertThat(instead.compostNitrogenKg()).isLessThan(organs.nitrogenKg());
    assertThat(codes(outcome)).contains("ethanol.more-as-methane");
  }

  /** The same mash and column over an open fire of 0.40 instead of a boiler of 0.75. */
  @Test
  void anOpenFireTakesTheGainAway() {
    EthanolEstimate fire = tubers("firewood", Stills.column(15, 3.5, 0.7));
    EthanolEstimate boiler = tubers("wood-pellets", Stills.column(15, 3.5, 0.7));
    assertThat(fire.heat().sourceEfficiency()).isCloseTo(0.40, within(0.001));
    assertThat(boiler.heat().sourceEfficiency()).isCloseTo(0.75, within(0.001));
    assertThat(fire.annual().fuelEnergyKWh()).isEqualTo(boiler.annual().fuelEnergyKWh());
    assertThat(fire.annual().netEnergyKWh()).isLessThan(boiler.annual().netEnergyKWh());
    assertThat(fire.heat().energyRatio()).isLessThan(1);
  }

  /** Water boils at 95 Cel under 84.5 kPa, at about 1500 m; from memory. */
  @Test
  void inTheMountainsTheBeerBoilsCoolerAndTakesLessHeat() {
    FuelDesign fuel = Stills.fuel(MashRoute.ENZYME, "wood-pellets");
    for (StillDesign still : List.of(Stills.pot(1), Stills.column(15, 3.5, 0))) {
      EthanolEstimate sea =
          EthanolModel.run(fuel, still, TUBERS, STIFF_MASH, false, "heap", SEA_LEVEL).estimate();
      EthanolEstimate high =
          EthanolModel.run(fuel, still, TUBERS, STIFF_MASH, false, "heap", 84.5).estimate();
      double cooler = sea.still().beerBoilsAtC() - high.still().beerBoilsAtC();
      assertThat(cooler).isCloseTo(5, within(0.5));
      assertThat(high.heat().feedKWh())
          .isCloseTo(
              sea.heat().feedKWh() * (1 - cooler / (sea.still().beerBoilsAtC() - 30)),
              within(1e-6 * sea.heat().feedKWh()));
      assertThat(high.annual().ethanolL()).isEqualTo(sea.annual().ethanolL());
    }
    EthanolEstimate veryHigh =
        EthanolModel.run(fuel, Stills.pot(1), TUBERS, STIFF_MASH, false, "heap", 60).estimate();
    EthanolEstimate sea =
        EthanolModel.run(fuel, Stills.pot(1), TUBERS, STIFF_MASH, false, "heap", SEA_LEVEL)
            .estimate();
    assertThat(veryHigh.heat().mashKWh()).isLessThan(sea.heat().mashKWh());
  }

  /** Published flash points of mixtures: 36 Cel at 20, 29 at 30 and 26 at 40 percent by volume. */
  @Test
  void eachStrengthMadeHasItsFlashPoint() {
    EthanolEstimate.StillFigures twice = tubers("firewood", Stills.pot(2)).still();
    EthanolEstimate.StillFigures once = tubers("firewood", Stills.pot(1)).still();
    assertThat(twice.firstRunStrengthPercentVol())
        .isCloseTo(once.productStrengthPercentVol(), within(1e-6));
    assertThat(twice.firstRunFlashPointC()).isCloseTo(once.flashPointC(), within(1e-6));
    assertThat(twice.firstRunFlashPointC()).isBetween(25.0, 36.0);
    assertThat(twice.flashPointC()).isLessThan(twice.firstRunFlashPointC());
    assertThat(once.firstRunStrengthPercentVol()).isNull();
    assertThat(tubers("firewood", Stills.column(10, 3, 0)).still().firstRunFlashPointC()).isNull();
  }

  /** The vapour's strength is read at one atmosphere; at 70 kPa, 3000 m, van Laar gives as much. */
  @Test
  void pressureHardlyChangesTheVapour() {
    for (double x : new double[] {0.01, 0.03, 0.1, 0.3, 0.6, 0.8}) {
      double low = EthanolWaterEquilibrium.vapourFraction(x, SEA_LEVEL);
      assertThat(EthanolWaterEquilibrium.vapourFraction(x, 70)).isCloseTo(low, within(0.015 * low));
    }
  }

  /** Heat, water of the mash and all else but the alcohol that is made and what it lost go on. */
  @Test
  void nitrogenPhosphorusPotassiumAndCarbonCloseThroughMashStillAndStillage() {
    EthanolOutcome outcome =
        Stills.run(Stills.fuel(MashRoute.MALT, "firewood"), Stills.pot(2), CATTAIL);
    ClosedBooks.assertClosed(outcome.account());
    Matter came = Matter.NONE;
    for (var entry : outcome.account().received()) {
      came = came.plus(entry.matter());
    }
    Matter stillage = outcome.stillage();
    assertThat(stillage.nitrogenKg()).isCloseTo(came.nitrogenKg(), within(1e-9));
    assertThat(stillage.phosphorusKg()).isCloseTo(came.phosphorusKg(), within(1e-9));
    assertThat(stillage.potassiumKg()).isCloseTo(came.potassiumKg(), within(1e-9));
  }

  @Test
  void aPotOverAnOpenFireNeverBreaksEven() {
    EthanolEstimate estimate = tubers("firewood", Stills.pot(2));
    assertThat(estimate.annual().netEnergyKWh()).isNegative();
    assertThat(estimate.mash().breakEvenStrengthPercentVol()).isNull();
  }

  @Test
  void atTheBreakEvenStrengthThePlanIsWorthItsHeat() {
    StillDesign still = Stills.column(15, 3.5, 0.7);
    FuelDesign fuel = Stills.fuel(MashRoute.ENZYME, "wood-pellets");
    EthanolRun run = EthanolRun.of(fuel, still, TUBERS, STIFF_MASH, SEA_LEVEL);
    double strength = run.breakEven().orElseThrow();
    Distilling there =
        run.distillery().run(run.beer().withStrength(strength), run.electricityKWh());
    assertThat(there.netKWh()).isCloseTo(0, within(1e-6 * run.distilling().fuelKWh()));
  }

  @Test
  void heatRecoveryHelpsAndTheHeatsAddUp() {
    EthanolEstimate plain = tubers("wood-pellets", Stills.column(15, 3.5, 0));
    EthanolEstimate recovering = tubers("wood-pellets", Stills.column(15, 3.5, 0.7));
    assertThat(recovering.annual().netEnergyKWh()).isGreaterThan(plain.annual().netEnergyKWh());
    EthanolEstimate.HeatFigures heat = recovering.heat();
    assertThat(recovering.annual().processHeatKWh())
        .isCloseTo(
            heat.mashKWh()
                - heat.mashReusedKWh()
                + heat.feedKWh()
                - heat.recoveredKWh()
                + heat.boilUpKWh()
                + heat.vesselLossKWh(),
            within(1e-9));
    assertThat(recovering.annual().netEnergyKWh())
        .isCloseTo(
            recovering.annual().fuelEnergyKWh()
                - recovering.annual().processHeatKWh() / heat.sourceEfficiency()
                - EU_ELECTRICITY * heat.electricityKWh(),
            within(1e-9));
  }

  /**
   * An electric still takes the primary energy of its electricity, a still on sunshine none: a kWh
   * from the grid took 2.1 kWh from nature by the default of the European Union of 2018.
   */
  @Test
  void electricityCountsWithWhatMakingItTakesAndSunshineNotAtAll() {
    StillDesign still = Stills.column(15, 3.5, 0.7);
    EthanolEstimate electric = tubers("electricity", still);
    EthanolEstimate boiler = tubers("wood-pellets", still);
    EthanolEstimate sun = tubers("solar-heat", still);
    EthanolEstimate.HeatFigures heat = electric.heat();
    assertThat(heat.primaryEnergyKWh())
        .isCloseTo(EU_ELECTRICITY * (heat.sourceEnergyKWh() + heat.electricityKWh()), within(1e-9));
    assertThat(sun.heat().primaryEnergyKWh())
        .isCloseTo(EU_ELECTRICITY * sun.heat().electricityKWh(), within(1e-9));
    assertThat(electric.heat().energyRatio()).isLessThan(boiler.heat().energyRatio());
    assertThat(sun.heat().energyRatio()).isGreaterThan(boiler.heat().energyRatio());
    assertThat(sun.mash().breakEvenStrengthPercentVol())
        .isLessThan(boiler.mash().breakEvenStrengthPercentVol());
    for (EthanolEstimate estimate : List.of(electric, boiler, sun)) {
      assertThat(estimate.annual().netEnergyKWh())
          .isCloseTo(
              estimate.annual().fuelEnergyKWh() - estimate.heat().primaryEnergyKWh(), within(1e-9));
    }
  }

  @Test
  void moreStarchNeverGivesLessAlcohol() {
    double before = -1;
    for (double starch = 0; starch <= 0.9; starch += 0.02) {
      Harvest harvest = Stills.harvest(Stills.lot("taro", 50, 0.7, starch));
      double litres =
          Stills.run(Stills.fuel(MashRoute.ENZYME, "lpg"), Stills.column(10, 3, 0), harvest)
              .estimate()
              .annual()
              .ethanolL();
      assertThat(litres).isGreaterThan(before);
      before = litres;
    }
  }

  @Test
  void nothingMashedGivesNoughtsAndANotice() {
    EthanolOutcome outcome =
        Stills.run(Stills.fuel(MashRoute.MALT, "firewood"), Stills.pot(2), Harvest.NONE);
    assertThat(outcome.estimate().annual()).isEqualTo(new EthanolEstimate.Annual(0, 0, 0, 0));
    assertThat(outcome.stillage()).isEqualTo(Matter.NONE);
    assertThat(codes(outcome)).containsExactly("ethanol.nothing-mashed");
    assertNoNaN(outcome);
  }

  @Test
  void organsWithoutStarchPassOnUncooked() {
    Harvest.Lot tough = Stills.lot("common-reed", 20, 0.6, 0);
    Harvest harvest =
        Stills.harvest(new Harvest.Lot("bed-1", tough.plant(), tough.organs(), 0, 0, Matter.NONE));
    EthanolOutcome outcome =
        Stills.run(Stills.fuel(MashRoute.ENZYME, "firewood"), Stills.pot(1), harvest);
    assertThat(outcome.estimate().annual()).isEqualTo(new EthanolEstimate.Annual(0, 0, 0, 0));
    assertThat(outcome.stillage()).isEqualTo(tough.organs());
    assertThat(codes(outcome)).contains("ethanol.no-starch");
    ClosedBooks.assertClosed(outcome.account());
    assertNoNaN(outcome);
  }

  @Test
  void starchThatTheOrgansCannotHoldIsHeldToWhatTheyCan() {
    Harvest harvest = Stills.harvest(Stills.lot("taro", 20, 0.7, 1.4));
    EthanolOutcome outcome =
        Stills.run(Stills.fuel(MashRoute.ENZYME, "firewood"), Stills.pot(1), harvest);
    assertThat(codes(outcome)).contains("ethanol.starch-exceeds-organs");
    assertThat(outcome.estimate().mash().starchKg()).isLessThan(20);
    assertThat(outcome.stillage().volatileSolidsKg()).isPositive();
    assertThat(outcome.stillage().organicCarbonKg()).isPositive();
    ClosedBooks.assertClosed(outcome.account());
  }

  @Test
  void yeastStopsAtItsLimitAndTheSugarStays() {
    CoefficientSet dry = Stills.CENTRAL.with(Map.of("plants.taro.mash-water", 1.0));
    Harvest harvest = Stills.harvest(Stills.lot("taro", 50, 0.5, 0.8));
    EthanolOutcome outcome =
        EthanolModel.run(
            Stills.fuel(MashRoute.ENZYME, "lpg"),
            Stills.column(10, 3, 0),
            harvest,
            dry,
            false,
            "heap",
            SEA_LEVEL);
    assertThat(outcome.estimate().mash().beerStrengthPercentVol()).isCloseTo(12, within(1e-6));
    assertThat(codes(outcome))
        .contains("ethanol.yeast-limit")
        .doesNotContain("ethanol.human-origin");
    ClosedBooks.assertClosed(outcome.account());
  }

  @Test
  void aBeerWeakerThanWhatTheStillLeavesIsNotDistilled() {
    CoefficientSet thin =
        Stills.CENTRAL.with(
            Map.of(
                "plants.taro.mash-water", 60.0,
                "ethanol.pot-end-strength", 0.04,
                "ethanol.column-end-strength", 0.02));
    for (StillDesign still : List.of(Stills.pot(2), Stills.column(10, 3, 0.5))) {
      FuelDesign fuel = Stills.fuel(MashRoute.ENZYME, "lpg");
      EthanolOutcome outcome =
          EthanolModel.run(fuel, still, TUBERS, thin, false, "heap", SEA_LEVEL);
      assertThat(outcome.estimate().annual().ethanolL()).isZero();
      assertThat(outcome.estimate().annual().processHeatKWh()).isPositive();
      assertThat(codes(outcome)).contains("ethanol.too-weak-to-distil");
      assertThat(EthanolModel.working(fuel, still, TUBERS, thin, SEA_LEVEL)).isNotEmpty();
      ClosedBooks.assertClosed(outcome.account());
      assertNoNaN(outcome);
    }
  }

  @Test
  void theWorkingCanBeWorkedForAnyHarvestAndStill() {
    Random random = new Random(23);
    for (int i = 0; i < 100; i++) {
      Harvest harvest =
          Stills.harvest(
              Stills.lot("taro", random.nextDouble() * 100, 0.9 * random.nextDouble(), 0.8));
      StillDesign still =
          new StillDesign(
              random.nextBoolean() ? StillKind.POT : StillKind.COLUMN,
              1 + 79 * random.nextDouble(),
              0.05 + 99 * random.nextDouble(),
              1 + random.nextInt(2),
              0.5,
              null);
      FuelDesign fuel = Stills.fuel(MashRoute.MALT, "kerosene");
      assertThat(EthanolModel.working(fuel, still, harvest, Stills.CENTRAL, SEA_LEVEL))
          .allSatisfy(step -> assertThat(step.value()).isFinite());
    }
  }

  @Test
  void maltBringsSugarOfItsOwn() {
    EthanolEstimate malt =
        Stills.run(Stills.fuel(MashRoute.MALT, "lpg"), Stills.column(10, 3, 0), TUBERS).estimate();
    assertThat(malt.mash().maltKg()).isPositive();
    assertThat(malt.mash().fromMaltFraction()).isBetween(0.05, 0.3);
    assertThat(malt.mash().enzymesKg()).isZero();
  }

  @Test
  void elementsCloseForAnyHarvestAndStill() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      EthanolOutcome outcome = outcome(random);
      ClosedBooks.assertClosed(outcome.account());
      assertNoNaN(outcome);
      assertThat(outcome.stillage().codKg()).isNotNegative();
      assertThat(outcome.stillage().waterKg()).isNotNegative();
    }
  }

  private static EthanolOutcome outcome(Random random) {
    String[] plants = {"broadleaf-cattail", "taro", "common-reed", "spike-rush-corm"};
    Harvest.Lot[] lots = new Harvest.Lot[1 + random.nextInt(3)];
    for (int lot = 0; lot < lots.length; lot++) {
      lots[lot] =
          Stills.lot(
              plants[random.nextInt(plants.length)],
              random.nextDouble() * 200,
              0.2 + 0.75 * random.nextDouble(),
              random.nextDouble());
    }
    StillDesign still =
        new StillDesign(
            random.nextBoolean() ? StillKind.POT : StillKind.COLUMN,
            1 + 79 * random.nextDouble(),
            0.05 + 20 * random.nextDouble(),
            1 + random.nextInt(2),
            0.95 * random.nextDouble(),
            null);
    MashRoute route = random.nextBoolean() ? MashRoute.ENZYME : MashRoute.MALT;
    FuelDesign fuel = new FuelDesign(random.nextDouble(), route, still, "biogas");
    return EthanolModel.run(
        fuel, still, Stills.harvest(lots), Stills.CENTRAL, true, "heap", SEA_LEVEL);
  }

  @Test
  void theWorkingLeadsToTheFigures() {
    for (StillDesign still : List.of(Stills.pot(2), Stills.column(10, 3, 0.5))) {
      FuelDesign fuel = Stills.fuel(MashRoute.ENZYME, "firewood");
      EthanolEstimate estimate = Stills.run(fuel, still, CATTAIL).estimate();
      List<Step> steps = EthanolModel.working(fuel, still, CATTAIL, Stills.CENTRAL, SEA_LEVEL);
      assertThat(steps)
          .filteredOn(step -> step.formula().equals("ethanol.beer-strength"))
          .singleElement()
          .satisfies(
              step ->
                  assertThat(100 * step.value())
                      .isEqualTo(estimate.mash().beerStrengthPercentVol()));
      assertThat(steps)
          .filteredOn(step -> step.formula().equals("ethanol.volume-fraction"))
          .singleElement()
          .satisfies(
              step ->
                  assertThat(100 * step.value())
                      .isCloseTo(estimate.still().productStrengthPercentVol(), within(1e-9)));
    }
  }

  @Test
  void aStrengthOutOfReachIsAFaultThatNamesWhatWouldReachIt() {
    StillDesign weak = new StillDesign(StillKind.COLUMN, 10.0, 3.0, 2, 0.0, 90.0);
    FuelDesign fuel = Stills.fuel(MashRoute.ENZYME, "firewood");
    assertThat(StillTarget.faults(weak, Stills.run(fuel, weak, CATTAIL).estimate()))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.pointer()).isEqualTo("/fuel/still/targetStrengthPercentVol");
              assertThat((double) fault.params().get("leastRefluxRatio")).isGreaterThan(3);
            });
    StillDesign strong = new StillDesign(StillKind.COLUMN, 20.0, 15.0, 2, 0.0, 90.0);
    assertThat(StillTarget.faults(strong, Stills.run(fuel, strong, CATTAIL).estimate())).isEmpty();
  }

  private static EthanolEstimate tubers(String heat, StillDesign still) {
    return EthanolModel.run(
            Stills.fuel(MashRoute.ENZYME, heat),
            still,
            TUBERS,
            STIFF_MASH,
            false,
            "heap",
            SEA_LEVEL)
        .estimate();
  }

  private static List<String> codes(EthanolOutcome outcome) {
    return outcome.notices().stream().map(Notice::code).toList();
  }

  private static void assertNoNaN(EthanolOutcome outcome) {
    assertThat(outcome.estimate().toString()).doesNotContain("NaN").doesNotContain("Infinity");
  }
}
