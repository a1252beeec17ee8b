package org.marshlight.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.feed.Party;
import org.marshlight.wetland.WetlandEstimate;

/**
 * The headline figures of an invented homestead, whose people are away in February, against the
 * flows of the same answer, which every process books by itself.
 */
class HeadlinesAgainstFlowsTest {

  /** Mass of a cubic metre of methane at 0 Cel and 101.325 kPa: 16.043 g/mol over 22.414 L/mol. */
  private static final double METHANE_G_PER_NM3 = 16.043 / 22.414e-3;

  /** Density of ethanol at 20 Cel, kg/L: OIML R 22, from memory. */
  private static final double ETHANOL_KG_L = 0.78924;

  /** Carbon in ethanol, C2H6O: 2 x 12.011 over 46.069 g/mol. */
  private static final double CARBON_OF_ETHANOL = 2 * 12.011 / 46.069;

  private static final List<Double> PRESENT =
      List.of(1.0, 0.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0);

  private static final LoopRun RUN = run(PlanBuilder.homestead().people(4, PRESENT).build());

  private static LoopRun run(Plan plan) {
    PreparedSite site = PreparedSite.of(plan, LoopModel.coefficients(plan));
    return LoopModel.run(plan, Stage.LOOP, site, LoopModel.coefficients(plan));
  }

  private static double flow(String quantity, String from, String to) {
    return RUN.flows().stream()
        .filter(f -> f.quantity().equals(quantity) && f.from().equals(from) && f.to().equals(to))
        .mapToDouble(Flow::perYear)
        .sum();
  }

  private static double sum(List<Double> months) {
    return months.stream().mapToDouble(Double::doubleValue).sum();
  }

  @Test
  void nutrientsOfCompostAreWhatThePileGivesToLand() {
    CompostEstimate.Annual compost = RUN.compost().estimate().annual();
    assertThat(compost.nitrogenKg()).isPositive();
    assertThat(compost.nitrogenKg())
        .isCloseTo(flow("nitrogen", Party.HEAP, Party.LAND), within(1e-9));
    assertThat(compost.phosphorusKg())
        .isCloseTo(flow("phosphorus", Party.HEAP, Party.LAND), within(1e-9));
    assertThat(compost.potassiumKg())
        .isCloseTo(flow("potassium", Party.HEAP, Party.LAND), within(1e-9));
  }

  @Test
  void theLoadOfTheTankIsWhatPeopleAndFeedsBring() {
    DigesterEstimate.Load load = RUN.digester().estimate().load();
    assertThat(365 * load.nitrogenKgPerDay()).isCloseTo(brought("nitrogen"), within(1e-6));
    assertThat(365 * load.codKgPerDay()).isCloseTo(brought("cod"), within(1e-6));
    assertThat(365 * load.phosphorusKgPerDay()).isCloseTo(brought("phosphorus"), within(1e-6));
  }

  private static double brought(String quantity) {
    return flow(quantity, Party.PEOPLE, Party.TANK) + flow(quantity, Party.FEEDS, Party.TANK);
  }

  @Test
  void methaneThatArrivesIsThatProducedLessDissolvedAndLeaked() {
    DigesterEstimate.Annual year = RUN.digester().estimate().annual();
    DigesterEstimate.Monthly months = RUN.digester().estimate().monthly();
    assertThat(year.methaneDissolvedNm3()).isPositive();
    assertThat(year.methaneLeakedNm3()).isPositive();
    assertThat(year.methaneNm3())
        .isCloseTo(
            year.methaneProducedNm3() - year.methaneDissolvedNm3() - year.methaneLeakedNm3(),
            within(1e-9));
    assertThat(sum(months.methaneNm3())).isCloseTo(year.methaneNm3(), within(1e-9));
    assertThat(sum(months.methaneProducedNm3())).isCloseTo(year.methaneProducedNm3(), within(1e-9));
    assertThat(sum(months.methaneDissolvedNm3()))
        .isCloseTo(year.methaneDissolvedNm3(), within(1e-9));
    assertThat(sum(months.methaneLeakedNm3())).isCloseTo(year.methaneLeakedNm3(), within(1e-9));
    assertThat(sum(months.gasEnergyKWh())).isCloseTo(year.gasEnergyKWh(), within(1e-6));
  }

  /** Methane that leaves the liquid as gas, by the days on which people are at home. */
  @Test
  void methanePerPersonDayLeavesOutWhatIsDissolvedAndDaysAway() {
    DigesterEstimate.Annual year = RUN.digester().estimate().annual();
    double grams = (year.methaneProducedNm3() - year.methaneDissolvedNm3()) * METHANE_G_PER_NM3;
    assertThat(year.methaneTotalGPerPersonDay())
        .isCloseTo(grams / (4 * (365 - 28)), within(0.001 * grams / (4 * 337)));
    assertThat(year.methaneGPerPersonDay())
        .isPositive()
        .isLessThan(year.methaneTotalGPerPersonDay());
  }

  @Test
  void litresOfAlcoholHoldTheCarbonThatTheStillGives() {
    double litres = RUN.ethanol().estimate().annual().ethanolL();
    double carbonKg = flow("carbon", Party.STILL, Party.FUEL_TANK);
    assertThat(litres).isPositive();
    assertThat(carbonKg)
        .isCloseTo(litres * ETHANOL_KG_L * CARBON_OF_ETHANOL, within(0.002 * carbonKg));
  }

  @Test
  void nutrientsOfPumpedSludgeAreWhatIsHauledAway() {
    DigesterEstimate.Sludge sludge = RUN.digester().estimate().sludge();
    assertThat(sludge.pumpedNitrogenKgPerYear())
        .isPositive()
        .isCloseTo(flow("nitrogen", Party.TANK, Party.HAULED_AWAY), within(1e-9));
    assertThat(sludge.pumpedPhosphorusKgPerYear())
        .isCloseTo(flow("phosphorus", Party.TANK, Party.HAULED_AWAY), within(1e-9));
  }

  @Test
  void nitrogenOfTheOutflowIsItsConcentrationTimesItsVolume() {
    WetlandEstimate.Monthly months = RUN.wetland().estimate().monthly();
    double kg = 0;
    for (int month = 0; month < 12; month++) {
      Double mgL = months.effluentTotalNitrogenMgL().get(month);
      kg += mgL == null ? 0 : mgL * months.outflowM3().get(month) / 1000;
    }
    assertThat(kg)
        .isPositive()
        .isCloseTo(flow("nitrogen", Party.bed(0), Party.WATER_USE), within(1e-6));
  }
}
