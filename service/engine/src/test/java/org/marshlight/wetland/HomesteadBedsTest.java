package org.marshlight.wetland;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.crop.BedFixture;
import org.marshlight.crop.CropGrowth;
import org.marshlight.crop.CropModel;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.Step;
import org.marshlight.feed.WaterStream;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/** Beds of single homes: what measured ones did, and what a plan must be told. */
class HomesteadBedsTest {

  private static final String CATTAIL = "broadleaf-cattail";

  /** Ohio, 21 homes: BOD 80 to 90, solids 64 to 78, nitrogen 66 to 70, phosphorus 49 to 87 %. */
  @Test
  void aUsualBedCleansAsMeasuredOnesDo() {
    WetlandEstimate.Annual year = usual().annual();
    assertThat(year.bod5RemovedFraction()).isBetween(0.78, 0.92);
    assertThat(year.suspendedSolidsRemovedFraction()).isBetween(0.64, 0.88);
    assertThat(year.totalNitrogenRemovedFraction()).isBetween(0.35, 0.75);
    assertThat(year.totalPhosphorusRemovedFraction()).isBetween(0.30, 0.87);
    assertThat(year.coliformLogRemoval()).isBetween(1.0, 2.0);
  }

  /** Vymazal 1999, Czech beds: 3.35 g a square metre and day, mean outflow 13.2 mg/L. */
  @Test
  void aBedWithTheMeanCzechLoadComesNearTheMeanCzechOutflow() {
    double area = 40;
    double flow = 0.034 * area;
    double bod5 =
        BedFixture.run(
                BedFixture.hill(),
                BedFixture.stream(flow, 98.5, 60, 40, 6),
                BedFixture.gravel(area, "common-reed", 0))
            .estimate()
            .annual()
            .effluentBod5MgL();
    assertThat(bod5).isBetween(10.0, 30.0);
  }

  /** Northern Minnesota: 42 % of nitrogen in summer and 20 % in winter, from 95 mg/L. */
  @Test
  void winterTakesAboutHalfAsMuchNitrogenAsSummer() {
    WaterStream inflow = BedFixture.stream(0.6, 300, 100, 95, 12);
    WaterStream outflow =
        BedFixture.run(BedFixture.hill(), inflow, BedFixture.gravel(40, CATTAIL, 0.33)).outflow();
    assertThat(removed(inflow, outflow, 6)).isBetween(0.35, 0.75);
    assertThat(removed(inflow, outflow, 0)).isBetween(0.10, 0.40);
  }

  private static double removed(WaterStream inflow, WaterStream outflow, int month) {
    return 1 - outflow.monthly().get(month).nitrogenKg() / inflow.monthly().get(month).nitrogenKg();
  }

  /** Tanner 1995: plants stored 3 to 20 % of the nitrogen that beds removed. */
  @Test
  void plantsHoldOnlyASmallPartOfTheNitrogenRemoved() {
    WetlandEstimate.Fates nitrogen = usual().beds().get(0).nitrogen();
    double removed = nitrogen.inflowKg() - nitrogen.outflowKg();
    assertThat(nitrogen.uptakeKg() / removed).isBetween(0.03, 0.25);
    assertThat(nitrogen.harvestShareOfRemoval()).isBetween(0.02, 0.20);
  }

  @Test
  void potassiumLeavesOnlyWithPlants() {
    WetlandEstimate.Fates potassium = usual().beds().get(0).potassium();
    assertThat(potassium.inflowKg() - potassium.outflowKg())
        .isCloseTo(potassium.harvestedKg(), within(1e-6));
  }

  @Test
  void phosphorusBreaksThroughAsTheMediumFills() {
    List<WetlandEstimate.PhosphorusYear> years = usual().phosphorusYears();
    assertThat(years).extracting(WetlandEstimate.PhosphorusYear::year).containsExactly(1, 5, 20);
    assertThat(years.get(0).removedFraction())
        .isGreaterThan(years.get(1).removedFraction())
        .isGreaterThan(years.get(2).removedFraction());
  }

  @Test
  void theFifthYearIsTheHeadline() {
    WetlandEstimate estimate =
        BedFixture.run(
                BedFixture.hill(),
                BedFixture.septic(0.6),
                BedFixture.gravel(24, CATTAIL, 0.33),
                BedFixture.open(16, "broadleaf-arrowhead", 0.6))
            .estimate();
    assertThat(estimate.annual().effluentTotalPhosphorusMgL())
        .isCloseTo(estimate.phosphorusYears().get(1).effluentTotalPhosphorusMgL(), within(1e-9));
  }

  @Test
  void aHotDryMonthReportsNoDischarge() {
    WetlandOutcome<CropGrowth> outcome =
        BedFixture.run(
            BedFixture.dry(), BedFixture.septic(0.25), BedFixture.gravel(60, CATTAIL, 0.33));
    WetlandEstimate estimate = outcome.estimate();
    int july = 6;
    assertThat(estimate.monthly().outflowM3().get(july)).isZero();
    assertThat(estimate.monthly().effluentBod5MgL().get(july)).isNull();
    assertThat(estimate.withoutOutflow())
        .extracting(WetlandEstimate.NoOutflow::month)
        .contains(july + 1);
    assertThat(estimate.fitness().monthly().get(july)).isEqualTo(UseAnswer.NO_OUTFLOW);
    assertThat(codes(outcome.notices())).contains("wetland.no-outflow", "wetland.salts-stay");
    assertThat(Months.sum(Months.array(estimate.monthly().outflowM3()))).isPositive();
  }

  /** What stayed in the dry months leaves in the first wet one. */
  @Test
  void saltsOfDryMonthsLeaveInAWetterOne() {
    WaterStream inflow = BedFixture.septic(0.25);
    WetlandOutcome<CropGrowth> outcome =
        BedFixture.run(BedFixture.dry(), inflow, BedFixture.gravel(60, CATTAIL, 0.33));
    int firstWet = 0;
    while (outcome.outflow().volumeM3((firstWet + 7) % 12) <= 0) {
      firstWet++;
    }
    int month = (firstWet + 7) % 12;
    assertThat(outcome.outflow().monthly().get(month).potassiumKg())
        .isGreaterThan(2 * inflow.monthly().get(month).potassiumKg());
  }

  /** FAO 29: below 450 mg/L no restriction, above 2000 a severe one. */
  @Test
  void saltGrowsStrongerInDryMonthsAndIsHeldToTheLimitOfIrrigation() {
    WetlandEstimate estimate =
        BedFixture.run(
                BedFixture.dry(), BedFixture.septic(1.1), BedFixture.gravel(60, CATTAIL, 0.33))
            .estimate();
    List<Double> salt = estimate.monthly().effluentDissolvedSolidsMgL();
    int january = 0;
    int july = 6;
    double comes = 500 + BedFixture.CENTRAL.bind(WetlandCoefficients.class).suppliedMinerals();
    assertThat(salt.get(january))
        .isCloseTo(
            comes * estimate.monthly().concentrationFactor().get(january), within(1e-6 * comes));
    assertThat(salt.get(july)).isGreaterThan(2000);
    assertThat(estimate.monthly().effluentConductivityDSM().get(july)).isGreaterThan(3);
    assertThat(estimate.fitness().parameters())
        .filteredOn(parameter -> parameter.parameter().equals("dissolved-solids"))
        .singleElement()
        .satisfies(
            parameter -> {
              assertThat(parameter.monthly().get(january)).isEqualTo(UseAnswer.WITH_CARE);
              assertThat(parameter.monthly().get(july)).isEqualTo(UseAnswer.UNFIT);
            });
  }

  /** What the supply brings leaves with the water over the year, whatever gathers in between. */
  @Test
  void noSaltIsLostInTheBeds() {
    WaterStream inflow = BedFixture.septic(0.25);
    WetlandOutcome<CropGrowth> outcome =
        BedFixture.run(BedFixture.dry(), inflow, BedFixture.gravel(60, CATTAIL, 0.33));
    double supplied = BedFixture.CENTRAL.bind(WetlandCoefficients.class).suppliedMinerals();
    double left = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      Double strength = outcome.estimate().monthly().effluentDissolvedSolidsMgL().get(month);
      left += strength == null ? 0 : strength * outcome.outflow().volumeM3(month);
    }
    assertThat(left).isCloseTo((500 + supplied) * inflow.annualVolumeM3(), within(1e-6 * left));
  }

  /**
   * Down to beds that a single month flushes a little: what leaves is what comes, year for year.
   */
  @Test
  void bedsThatAreHardlyFlushedAreInTheirSteadyStateToo() {
    ClimateYear rainless =
        BedFixture.year(
            33,
            new double[] {8, 10, 14, 18, 23, 28, 32, 32, 28, 21, 14, 9},
            new double[] {3, 3.8, 5, 6.2, 7.2, 8, 7.8, 7.2, 6, 4.6, 3.4, 2.8},
            new double[Months.COUNT]);
    double least = 1;
    for (double flow = 0.01; flow < 0.5; flow *= 1.02) {
      WetlandOutcome<CropGrowth> outcome =
          BedFixture.run(rainless, BedFixture.septic(flow), BedFixture.gravel(60, CATTAIL, 0.33));
      double leaves = outcome.outflow().annualVolumeM3() / BedFixture.septic(flow).annualVolumeM3();
      WetlandEstimate.Fates potassium = outcome.estimate().beds().get(0).potassium();
      if (leaves > 0) {
        least = Math.min(least, leaves);
        assertThat(Math.abs(potassium.storedKg()))
            .as("%s m3/d", flow)
            .isLessThan(1e-6 * potassium.inflowKg());
      }
    }
    assertThat(least).isLessThan(0.05);
  }

  @Test
  void aBedWithoutInflowHasNoFiguresButNoFaultEither() {
    WetlandOutcome<CropGrowth> outcome =
        BedFixture.run(
            BedFixture.dry(), BedFixture.septic(0), BedFixture.gravel(20, CATTAIL, 0.33));
    assertThat(outcome.estimate().annual().bod5RemovedFraction()).isNull();
    assertThat(codes(outcome.notices())).contains("wetland.nothing-flows");
  }

  @Test
  void aMonthOffLeadsTheWaterPast() {
    BedDesign bed = BedFixture.gravel(30, CATTAIL, 0.33);
    BedDesign off =
        new BedDesign(
            bed.kind(),
            bed.areaM2(),
            bed.depthM(),
            null,
            bed.medium(),
            bed.plant(),
            0.33,
            List.of(1),
            0.0,
            1.0,
            null);
    WaterStream inflow = BedFixture.septic(0.6);
    WetlandOutcome<CropGrowth> outcome = BedFixture.run(BedFixture.hill(), inflow, off);
    assertThat(outcome.outflow().bod5Kg()[0]).isEqualTo(inflow.bod5Kg()[0]);
    assertThat(outcome.outflow().bod5Kg()[1]).isLessThan(0.5 * inflow.bod5Kg()[1]);
  }

  @Test
  void theFirstBedsOfManualsDifferSeveralfold() {
    WetlandEstimate estimate =
        BedFixture.run(
                BedFixture.hill(), BedFixture.septic(0.6), BedFixture.gravel(20, CATTAIL, 0.33))
            .estimate();
    assertThat(estimate.sizingRules()).hasSizeGreaterThanOrEqualTo(5);
    assertThat(estimate.sizingRuleSpread()).isGreaterThan(5);
    assertThat(estimate.sizingRules())
        .filteredOn(rule -> rule.code().equals("wetland.rule-load-20"))
        .allSatisfy(
            rule -> {
              assertThat(rule.areaM2()).isCloseTo(69.4, within(0.1));
              assertThat(rule.met()).isFalse();
            });
  }

  @Test
  void soilThatTakesNothingIsNoFallback() {
    ClimateYear year = BedFixture.hill();
    WetlandEstimate.SoilAbsorption soil =
        BedFixture.run(year, BedFixture.septic(0.6), BedFixture.gravel(20, CATTAIL, 0.33))
            .estimate()
            .soilAbsorption();
    assertThat(soil.suitable()).isTrue();
    assertThat(soil.areaM2()).isCloseTo(600 / 20.4, within(0.01));
    assertThat(soil.totalM2()).isCloseTo(2 * soil.areaM2(), within(1e-9));
    assertThat(soil.treatedAreaM2()).isLessThan(soil.areaM2());
  }

  @Test
  void nothingIsEverCalledSafeForFoodEatenRaw() {
    for (WaterUse use : WaterUse.values()) {
      WetlandModel.Inputs<CropGrowth> inputs =
          BedFixture.inputs(
              BedFixture.hill(),
              BedFixture.stream(0.1, 1, 1, 1, 0.1),
              null,
              BedFixture.gravel(400, CATTAIL, 0.33));
      WetlandOutcome<CropGrowth> outcome =
          WetlandModel.run(
              new WetlandModel.Inputs<>(
                  inputs.beds(),
                  use,
                  null,
                  inputs.intakes(),
                  inputs.climate(),
                  inputs.stands(),
                  inputs.destinations()),
              BedFixture.CENTRAL);
      assertThat(codes(outcome.notices())).contains("wetland.not-for-raw-food");
      assertThat(outcome.estimate().fitness().year()).isNotEqualTo(UseAnswer.UNFIT);
    }
  }

  @Test
  void theValveDivertsInNamedMonths() {
    DiversionDesign named = new DiversionDesign(List.of(3, 11), null, null, null);
    assertThat(divertedMonths(named, BedFixture.gravel(60, CATTAIL, 0.33))).containsExactly(3, 11);
  }

  @Test
  void theValveDivertsInFrost() {
    DiversionDesign frost = new DiversionDesign(null, true, null, null);
    assertThat(divertedMonths(frost, BedFixture.gravel(60, CATTAIL, 0.33)))
        .containsExactly(1, 2, 12);
  }

  @Test
  void theValveDivertsWhenABedIsOverloadedOrWouldFlood() {
    DiversionDesign clogging = new DiversionDesign(null, null, true, null);
    assertThat(divertedMonths(clogging, BedFixture.gravel(6, CATTAIL, 0.33))).hasSize(12);
    assertThat(divertedMonths(clogging, BedFixture.gravel(60, CATTAIL, 0.33))).isEmpty();
    BedDesign narrow = ofCoarseSand(60.0, 0.4);
    assertThat(divertedMonths(clogging, narrow)).hasSize(12);
  }

  @Test
  void theValveDivertsOnlyTheMonthsThatBreakALimit() {
    DiversionDesign limit = new DiversionDesign(null, null, null, true);
    BedDesign bed = BedFixture.gravel(60, CATTAIL, 0.33);
    List<UseAnswer> open =
        BedFixture.run(BedFixture.hill(), BedFixture.septic(0.6), bed)
            .estimate()
            .fitness()
            .monthly();
    List<Integer> over = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (open.get(month) == UseAnswer.UNFIT) {
        over.add(month + 1);
      }
    }
    assertThat(over).isNotEmpty().hasSizeLessThan(12);
    WetlandEstimate valved =
        WetlandModel.run(
                BedFixture.inputs(BedFixture.hill(), BedFixture.septic(0.6), limit, bed),
                BedFixture.CENTRAL)
            .estimate();
    assertThat(valved.diversion().months()).containsAll(over);
    assertThat(valved.fitness().year()).isNotEqualTo(UseAnswer.UNFIT);
    double diverted =
        valved.diversion().months().stream().mapToDouble(m -> 0.6 * Months.days(m - 1)).sum();
    assertThat(valved.diversion().waterM3()).isCloseTo(diverted, within(1e-9));
  }

  /** Salts have no sink: what the air takes of the water leaves them behind, to the last gram. */
  @Test
  void saltsGrowStrongerWhereTheAirTakesTheWater() {
    WetlandEstimate dry =
        BedFixture.run(
                BedFixture.dry(), BedFixture.septic(0.6), BedFixture.gravel(40, CATTAIL, 0.33))
            .estimate();
    WetlandEstimate.UseVerdict salinity = verdict(dry, "chloride");
    double leaves = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      Double value = salinity.values().get(month);
      leaves += value == null ? 0 : value * dry.monthly().outflowM3().get(month);
    }
    assertThat(leaves).isCloseTo(68.6 * 0.6 * 365, within(1e-4));
    assertThat(salinity.monthly()).contains(UseAnswer.UNFIT);
    double factor = salinity.values().get(9) / 68.6;
    assertThat(verdict(dry, "sodium").values().get(9))
        .isCloseTo(3 * Math.sqrt(factor), within(1e-9));
    assertThat(verdict(dry, "boron").values().get(9)).isCloseTo(0.84 * factor, within(1e-9));
    assertThat(verdict(usual(), "chloride").monthly()).doesNotContain(UseAnswer.UNFIT);
  }

  private static WetlandEstimate.UseVerdict verdict(WetlandEstimate estimate, String parameter) {
    return estimate.fitness().parameters().stream()
        .filter(verdict -> verdict.parameter().equals(parameter))
        .findFirst()
        .orElseThrow();
  }

  private static List<Integer> divertedMonths(DiversionDesign diversion, BedDesign bed) {
    return WetlandModel.run(
            BedFixture.inputs(BedFixture.hill(), BedFixture.septic(0.6), diversion, bed),
            BedFixture.CENTRAL)
        .estimate()
        .diversion()
        .months();
  }

  @Test
  void aBedDeeperThanItsMediumAllowsIsRefused() {
    BedDesign sand = ofCoarseSand(20.0, 0.9);
    List<Fault> faults = BedCheck.faults(List.of(sand), "/beds", BedFixture.CENTRAL);
    assertThat(faults)
        .extracting(Fault::pointer)
        .containsExactly("/beds/0/depthM", "/beds/0/lengthM");
    assertThat(
            BedCheck.faults(
                List.of(BedFixture.gravel(20, CATTAIL, 0)), "/beds", BedFixture.CENTRAL))
        .isEmpty();
  }

  @Test
  void frostAsksForMulchAndIceIsTold() {
    WetlandOutcome<CropGrowth> outcome =
        BedFixture.run(
            BedFixture.hill(),
            BedFixture.septic(0.6),
            BedFixture.gravel(20, CATTAIL, 0.33),
            BedFixture.bed(BedKind.FREE_WATER_SURFACE, 16, 0.15, "broadleaf-arrowhead", 0.5));
    assertThat(codes(outcome.notices())).contains("wetland.mulch-advised", "wetland.frozen");
  }

  @Test
  void everyStepOfTheWorkingCanBeWorkedAgain() {
    List<Step> steps = new ArrayList<>();
    for (BedDesign bed :
        Arrays.asList(BedFixture.gravel(20, CATTAIL, 0.33), BedFixture.open(20, "taro", 0.5))) {
      WetlandModel.Inputs<CropGrowth> inputs =
          BedFixture.inputs(BedFixture.hill(), BedFixture.septic(0.6), null, bed);
      steps.addAll(WetlandModel.working(inputs, BedFixture.CENTRAL));
      steps.addAll(
          CropModel.working(
              CropModel.stands(List.of(bed), BedFixture.hill(), BedFixture.CENTRAL),
              BedFixture.hill(),
              BedFixture.CENTRAL));
    }
    assertThat(steps).hasSizeGreaterThan(30);
    for (Step step : steps) {
      assertThat(FormulaBook.standard().evaluate(step.formula(), step.inputs()))
          .isEqualTo(step.value());
    }
  }

  /** Forty square metres of cattail for four people. */
  private static WetlandEstimate usual() {
    return BedFixture.run(
            BedFixture.hill(), BedFixture.septic(0.6), BedFixture.gravel(40, CATTAIL, 0.33))
        .estimate();
  }

  private static List<String> codes(List<Notice> notices) {
    return notices.stream().map(Notice::code).toList();
  }

  private static BedDesign ofCoarseSand(double areaM2, double depthM) {
    return new BedDesign(
        BedKind.HORIZONTAL_SUBSURFACE,
        areaM2,
        depthM,
        150.0,
        "coarse-sand",
        CATTAIL,
        0.33,
        null,
        0.0,
        1.0,
        null);
  }
}
