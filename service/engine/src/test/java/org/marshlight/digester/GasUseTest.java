package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.marshlight.climate.ClimateYear;
import org.marshlight.contract.Months;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.FeedDesign;

/** Holds the store and the uses of gas to what any store must do. */
class GasUseTest {

  private static final int DAYS = 2 * Months.DAYS_PER_YEAR;

  @Test
  void aLargerStoreNeverServesLess() {
    SplittableRandom random = new SplittableRandom(20261125);
    for (int trial = 0; trial < 300; trial++) {
      double[] arriving = random.doubles(DAYS, 0, 2).toArray();
      double[] demand = random.doubles(3, 0, 0.8).toArray();
      double store = random.nextDouble(3);
      double small = used(run(arriving, store, demand, List.of(), 0));
      double large = used(run(arriving, 2 * store, demand, List.of(), 0));
      assertThat(large).as("trial %d", trial).isGreaterThanOrEqualTo(small - 1e-9);
    }
  }

  @Test
  void whatArrivesIsBurnedLeftOverOrStored() {
    SplittableRandom random = new SplittableRandom(7);
    double[] arriving = random.doubles(DAYS, 0, 2).toArray();
    GasStore.GasYear year = run(arriving, 1.5, new double[] {0.4, 0.5}, List.of(2), 3);
    assertThat(Arrays.stream(year.arrivingNm3).sum())
        .isCloseTo(
            used(year) + Arrays.stream(year.surplusOfDayNm3).sum() + year.storedNm3, within(1e-9));
  }

  @Test
  void nothingBurnsInMonthsOffNorDuringTheLagAfterThem() {
    double[] arriving = new double[DAYS];
    Arrays.fill(arriving, 1);
    GasStore.GasYear year = run(arriving, 0.5, new double[] {0.25}, List.of(2), 10);
    assertThat(year.usedNm3[0][1]).isZero();
    assertThat(year.usedNm3[0][2]).isCloseTo(0.25 * 21, within(1e-9));
  }

  @Test
  void earlierUsesAreServedFirst() {
    double[] arriving = new double[DAYS];
    Arrays.fill(arriving, 1);
    GasStore.GasYear year = run(arriving, 0, new double[] {0.8, 0.8}, List.of(), 0);
    assertThat(year.usedNm3[0][0]).isCloseTo(0.8 * 31, within(1e-9));
    assertThat(year.usedNm3[1][0]).isCloseTo(0.2 * 31, within(1e-9));
  }

  @Test
  void surplusThatWarmsTheTankComesBackAsHeatAndTheBooksClose() {
    ClimateYear year = TankFixture.year("boulder-broomfield");
    DigesterEstimate warmed = estimate(year, true);
    DigesterEstimate unwarmed = estimate(year, false);

    DigesterEstimate.TankHeating heating = warmed.tankHeating();
    assertThat(unwarmed.tankHeating()).isNull();
    assertThat(warmed.annual().meanLiquorTemperatureC())
        .isGreaterThan(unwarmed.annual().meanLiquorTemperatureC());
    assertThat(warmed.annual().highestLiquorTemperatureC())
        .isLessThan(Math.max(30.0, unwarmed.annual().highestLiquorTemperatureC() + 0.05));
    assertThat(heating.heatKWh()).isPositive();
    assertThat(warmed.heatFlowsKWh().burnedGas().stream().mapToDouble(Double::doubleValue).sum())
        .isCloseTo(heating.heatKWh(), within(1e-6 * heating.heatKWh()));
    // gas and heat are found in turn until they differ by 1e-7
    assertThat(heating.heatKWh())
        .isCloseTo(0.8 * heating.gasBurnedKWh(), within(1e-6 * heating.heatKWh()));
    // what is burned was left over by the uses before it, within a day's lag over the year's end
    assertThat(heating.gasBurnedKWh())
        .isLessThanOrEqualTo(
            warmed.monthly().gasEnergyKWh().stream().mapToDouble(Double::doubleValue).sum());
  }

  /** A surplus made on the last day of a month warms the tank on the first of the next. */
  @Test
  void noMonthLetsGoLessThanNothing() {
    DigesterEstimate.Monthly monthly =
        estimate(TankFixture.year("boulder-broomfield"), true).monthly();
    assertThat(monthly.gasSurplusKWh()).allSatisfy(kWh -> assertThat(kWh).isNotNegative());
  }

  private static DigesterEstimate estimate(ClimateYear year, boolean warmed) {
    GasUse cooking = new GasUse(GasPurpose.COOKING, 1.0, null, null, null);
    GasUse heating = new GasUse(GasPurpose.TANK_HEATING, null, null, 30.0, 0.8);
    GasDesign gas =
        new GasDesign(
            1.0,
            warmed ? List.of(cooking, heating) : List.of(cooking),
            GasSurplus.FLARE,
            null,
            null);
    FeedDesign manure =
        new Defaults(TankFixture.CENTRAL).fill(FeedDesign.of("cattle-manure", 40.0), "/feeds/0");
    return TankFixture.run(
            year,
            TankFixture.tank(6, 1),
            TankFixture.glass(8, 2, 1.0),
            gas,
            4,
            TankFixture.wastes(4, manure))
        .estimate();
  }

  private static GasStore.GasYear run(
      double[] arriving, double store, double[] demand, List<Integer> monthsOff, double lag) {
    double[] capacity = new double[Months.COUNT];
    Arrays.fill(capacity, store);
    return GasStore.run(arriving, capacity, demand, monthsOff, lag);
  }

  private static double used(GasStore.GasYear year) {
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      sum += year.usedNm3(month);
    }
    return sum;
  }
}
