package org.marshlight.crop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.feed.Matter;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.StandSupply;

/** What a stand does with light, warmth, nutrients and a harvest. */
class CropGrowthTest {

  private static final long SEED = 9100;
  private static final String CATTAIL = "broadleaf-cattail";

  private static final Map<String, ToDoubleFunction<Matter>> BALANCED =
      Map.of(
          "COD", Matter::codKg,
          "carbon", Matter::carbonKg,
          "nitrogen", Matter::nitrogenKg,
          "phosphorus", Matter::phosphorusKg,
          "potassium", Matter::potassiumKg);

  @Test
  void aStandAccountsForAllThatItMakesAndTakes() {
    for (int plan = 0; plan < 200; plan++) {
      RandomBeds random = new RandomBeds(SEED + plan);
      BedDesign bed = random.bed();
      CropStand stand = CropStand.of(bed, random.year(), BedFixture.CENTRAL);
      StandSupply supply = supply(random.logUniform(1e-4, 100), random);
      CropGrowth growth = stand.grow(supply);
      Matter in =
          growth
              .assimilated()
              .plus(
                  Tissue.nutrients(
                      Months.sum(growth.nitrogenUptakeKg()),
                      Months.sum(growth.phosphorusUptakeKg()),
                      Months.sum(growth.potassiumUptakeKg())));
      Matter out =
          growth
              .litter()
              .plus(growth.respired())
              .plus(growth.organs())
              .plus(growth.tops())
              .plus(growth.standing());
      String seed = "seed %s, bed %s".formatted(SEED + plan, bed);
      BALANCED.forEach(
          (name, quantity) ->
              assertThat(quantity.applyAsDouble(out))
                  .as("%s, %s", name, seed)
                  .isCloseTo(
                      quantity.applyAsDouble(in),
                      within(1e-9 * (1e-12 + quantity.applyAsDouble(in)))));
      neverMoreThan(supply.nitrogenKg(), growth.nitrogenUptakeKg(), seed);
      neverMoreThan(supply.phosphorusKg(), growth.phosphorusUptakeKg(), seed);
      neverMoreThan(supply.potassiumKg(), growth.potassiumUptakeKg(), seed);
    }
  }

  private static void neverMoreThan(double[] received, double[] taken, String seed) {
    for (int month = 0; month < Months.COUNT; month++) {
      assertThat(taken[month]).as(seed).isBetween(0.0, received[month] * (1 + 1e-12));
    }
  }

  @Test
  void moreLightNeverGivesLessBiomassAtEqualTemperatureWaterAndNutrients() {
    for (int plan = 0; plan < 300; plan++) {
      RandomBeds random = new RandomBeds(SEED + 1000 + plan);
      BedDesign bed = random.bed();
      ClimateYear year = random.year();
      StandSupply supply = supply(random.logUniform(1e-3, 1000), random);
      double before = 0;
      for (double light = 0.1; light <= 1; light += 0.1) {
        CropGrowth growth =
            CropStand.of(BedFixture.with(bed, bed.areaM2(), light), year, BedFixture.CENTRAL)
                .grow(supply);
        assertThat(growth.growthKg())
            .as("seed %s, light %s, bed %s", SEED + 1000 + plan, light, bed)
            .isGreaterThanOrEqualTo(before * (1 - 1e-7));
        before = growth.growthKg();
      }
    }
  }

  @Test
  void aHarvestAboveWhatAStandBearsThinsIt() {
    double sustained = standing(0.33).growthKg();
    assertThat(standing(0.2).growthKg()).isCloseTo(sustained, within(0.01 * sustained));
    assertThat(standing(0.7).growthKg()).isLessThan(0.8 * sustained);
    assertThat(standing(0.9).growthKg()).isLessThan(0.3 * sustained);
    assertThat(standing(1.0).growthKg()).isZero();
    double before = Double.POSITIVE_INFINITY;
    for (double share = 0; share <= 1; share += 0.1) {
      double underground = standing(share).undergroundBeforeHarvestKg();
      assertThat(underground).isLessThan(before);
      before = underground;
    }
  }

  @Test
  void theNoticeOfAHarvestAboveRegrowthComesWithIt() {
    assertThat(codes(BedFixture.gravel(10, CATTAIL, 0.8))).contains("crop.harvest-above-regrowth");
    assertThat(codes(BedFixture.gravel(10, CATTAIL, 0.3)))
        .doesNotContain("crop.harvest-above-regrowth");
  }

  @Test
  void invasivePlantsAndFoodAreSpokenOf() {
    assertThat(codes(BedFixture.gravel(10, "common-reed", 0.3)))
        .contains("crop.invasive", "crop.not-food");
    assertThat(codes(BedFixture.gravel(10, CATTAIL, 0.3))).doesNotContain("crop.invasive");
  }

  @Test
  void aTropicalPlantIsSaidToDieInFrost() {
    assertThat(codes(BedFixture.gravel(10, "taro", 0.5))).contains("crop.killed-by-frost");
    CropGrowth cold = stand(BedFixture.gravel(1, "taro", 0.5), BedFixture.hill());
    CropGrowth warm =
        stand(
            BedFixture.gravel(1, "taro", 0.5),
            BedFixture.year(10, Months.constant(27), Months.constant(5.2), Months.constant(150)));
    assertThat(cold.organs().totalSolidsKg()).isLessThan(0.01 * warm.organs().totalSolidsKg());
  }

  /** The same place half a year later and south of the equator gives the same harvest. */
  @Test
  void southAndNorthAreAlike() {
    double[] air = {-1, 1, 5, 10, 15, 18, 20, 19, 15, 10, 4, 0};
    double[] solar = {1.2, 2.1, 3.4, 4.7, 5.7, 6.1, 6.0, 5.1, 3.7, 2.3, 1.3, 1.0};
    double[] rain = Months.constant(60);
    CropGrowth north =
        stand(BedFixture.gravel(1, CATTAIL, 0.33), BedFixture.year(46, air, solar, rain));
    CropGrowth south =
        stand(
            BedFixture.gravel(1, CATTAIL, 0.33),
            BedFixture.year(-46, halfAYearLater(air), halfAYearLater(solar), rain));
    assertThat(south.growthKg()).isCloseTo(north.growthKg(), within(0.03 * north.growthKg()));
    assertThat(south.starchKg()).isCloseTo(north.starchKg(), within(0.03 * north.starchKg()));
    assertThat(south.topsDryKg()[1]).isGreaterThan(5 * south.topsDryKg()[7]);
  }

  private static double[] halfAYearLater(double[] values) {
    double[] later = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      later[(month + 6) % Months.COUNT] = values[month];
    }
    return later;
  }

  @Test
  void theScarcestNutrientHoldsGrowthBack() {
    double[] plenty = Months.constant(10);
    double[] little = Months.constant(1e-4);
    BedDesign bed = BedFixture.gravel(10, CATTAIL, 0.33);
    CropStand stand = CropStand.of(bed, BedFixture.hill(), BedFixture.CENTRAL);
    double[] wet = Months.constant(1);
    CropGrowth fed = stand.grow(new StandSupply(plenty, plenty, plenty, wet));
    CropGrowth poor = stand.grow(new StandSupply(plenty, little, plenty, wet));
    assertThat(poor.growthKg()).isLessThan(0.1 * fed.growthKg());
    assertThat(poor.lost().toPhosphorusKg()).isPositive();
    assertThat(poor.lost().toNitrogenKg()).isZero();
    assertThat(CropReport.of(List.of(stand), List.of(poor)).beds().get(0).limit())
        .isEqualTo(CropEstimate.Limit.PHOSPHORUS);
    assertThat(CropReport.of(List.of(stand), List.of(fed)).beds().get(0).limit())
        .isEqualTo(CropEstimate.Limit.NOTHING);
  }

  @Test
  void summerOrgansHoldLessStarchThanAutumnOnes() {
    assertThat(starchShare(7)).isLessThan(0.7 * starchShare(10));
    assertThat(starchShare(10))
        .isCloseTo(BedFixture.CENTRAL.value("plants.broadleaf-cattail.organ-starch"), within(0.02));
  }

  private static double starchShare(int harvestMonth) {
    BedDesign bed =
        new BedDesign(
            BedKind.HORIZONTAL_SUBSURFACE,
            1.0,
            0.5,
            null,
            "medium-gravel",
            CATTAIL,
            0.3,
            null,
            0.0,
            1.0,
            harvestMonth);
    CropGrowth growth = stand(bed, BedFixture.hill());
    return growth.starchKg() / growth.organs().totalSolidsKg();
  }

  @Test
  void theFirstYearsGiveLess() {
    CropStand stand =
        CropStand.of(BedFixture.gravel(10, CATTAIL, 0.33), BedFixture.hill(), BedFixture.CENTRAL);
    CropGrowth growth = stand.grow(plenty());
    CropEstimate estimate = CropReport.of(List.of(stand), List.of(growth));
    assertThat(estimate.years()).extracting(CropEstimate.StandYear::storageOrganDryKg).isSorted();
    assertThat(estimate.years().get(2).starchKg()).isEqualTo(estimate.annual().starchKg());
    assertThat(estimate.years().get(0).starchKg())
        .isCloseTo(0.35 * estimate.annual().starchKg(), within(1e-9));
  }

  /** Organs hold at least the COD, carbon and mass of the starch in them. */
  @Test
  void starchFitsIntoTheOrgansThatHoldIt() {
    for (String plant : org.marshlight.evidence.Catalogues.standard().ids("plants")) {
      CropGrowth growth =
          stand(
              BedFixture.gravel(1, plant, 0.33),
              BedFixture.year(10, Months.constant(26), Months.constant(5.2), Months.constant(150)));
      Matter organs = growth.organs();
      double carbohydrate = growth.starchKg() + growth.sugarKg();
      assertThat(organs.volatileSolidsKg()).as(plant).isGreaterThan(carbohydrate);
      assertThat(organs.codKg()).as(plant).isGreaterThan(1.185 * carbohydrate);
      assertThat(organs.organicCarbonKg()).as(plant).isGreaterThan(0.445 * carbohydrate);
    }
  }

  private static CropGrowth standing(double share) {
    return stand(BedFixture.gravel(1, CATTAIL, share), BedFixture.hill());
  }

  private static CropGrowth stand(BedDesign bed, ClimateYear year) {
    return CropStand.of(bed, year, BedFixture.CENTRAL).grow(plenty());
  }

  private static StandSupply plenty() {
    double[] plenty = Months.constant(1000);
    return new StandSupply(plenty, plenty, plenty, Months.constant(1));
  }

  private static StandSupply supply(double scale, RandomBeds random) {
    return new StandSupply(
        Months.constant(scale * random.uniform(0.1, 1)),
        Months.constant(0.2 * scale * random.uniform(0.1, 1)),
        Months.constant(scale * random.uniform(0.1, 1)),
        Months.constant(random.uniform(0.2, 1)));
  }

  private static List<String> codes(BedDesign bed) {
    ClimateYear year = BedFixture.hill();
    List<CropStand> stands = CropModel.stands(List.of(bed), year, BedFixture.CENTRAL);
    return CropModel.outcome(stands, List.of(stands.get(0).grow(plenty())), year, true)
        .notices()
        .stream()
        .map(Notice::code)
        .toList();
  }
}
