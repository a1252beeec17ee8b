package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.Distribution;
import org.marshlight.loop.Plan;
import org.marshlight.study.UncertaintyStudy.FigureSpread;

class UncertaintyTest {

  private static final String LEAK = "/coefficients/digester.leak-share";

  private static UncertaintyRequest request(Plan plan, int draws, String... outputs) {
    return new UncertaintyRequest(plan, draws, 1, List.of(outputs), null, null, null);
  }

  private static List<Fault> faults(UncertaintyRequest request) {
    List<Fault> faults = new ArrayList<>();
    assertThatThrownBy(request::prepare)
        .isInstanceOfSatisfying(Faults.class, thrown -> faults.addAll(thrown.list()));
    return faults;
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    UncertaintyRequest request = request(StudyFixture.PLAN, 48, "annual", "verdicts");
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void percentilesStandInOrderAndHoldTheCentralValue() {
    UncertaintyStudy study =
        StudyFixture.run(
                new UncertaintyRequest(StudyFixture.PLAN, 64, null, null, null, null, null), 2)
            .study();
    assertThat(study.figures()).hasSizeGreaterThan(8);
    for (FigureSpread figure : study.figures()) {
      DrawnSpread spread = figure.spread();
      assertThat(List.of(spread.p5(), spread.p10(), spread.p50(), spread.p90(), spread.p95()))
          .as(figure.name())
          .isSorted();
      assertThat(figure.central())
          .as(figure.name())
          .isBetween(spread.histogram().from(), spread.histogram().to());
      assertThat(spread.histogram().sharesFraction().stream().mapToDouble(s -> s).sum())
          .isCloseTo(1, within(1e-9));
    }
    assertThat(study.seed()).isEqualTo(1);
    assertThat(study.drawsWithoutAnswer()).isZero();
  }

  @Test
  void theModelsOwnErrorIsToldApart() {
    UncertaintyStudy study =
        StudyFixture.run(request(StudyFixture.PLAN, 64, "digester.gasEnergyKWh"), 2).study();
    FigureSpread gas = study.figures().get(0);
    assertThat(gas.modelError().p50()).isCloseTo(gas.central(), within(0.05 * gas.central()));
    assertThat(gas.together().deviation()).isGreaterThan(gas.modelError().deviation());
    double share = gas.modelError().p90() / gas.central();
    assertThat(share).as("the book's ninetieth percentile").isCloseTo(1.45, within(0.06));
  }

  @Test
  void aModelErrorThatThePlanSetsIsNotDrawn() {
    Plan plan = StudyFixture.plan(Map.of("study.discrepancy.digester", 1.2));
    FigureSpread gas =
        StudyFixture.run(request(plan, 16, "digester.gasEnergyKWh"), 2).study().figures().get(0);
    assertThat(gas.modelError().p5()).isCloseTo(1.2 * gas.central(), within(1e-9));
    assertThat(gas.modelError().deviation()).isCloseTo(0, within(1e-9));
  }

  @Test
  void aCoefficientThatThePlanSetsIsNotDrawn() {
    int all =
        StudyFixture.run(request(StudyFixture.PLAN, 16, "digester.gasEnergyKWh"), 1)
            .study()
            .uncertainNumbers();
    int one =
        StudyFixture.run(
                request(
                    StudyFixture.plan(Map.of("digester.leak-share", 0.1)),
                    16,
                    "digester.gasEnergyKWh"),
                1)
            .study()
            .uncertainNumbers();
    assertThat(one).isEqualTo(all - 1);
  }

  @Test
  void aStatedRangeIsDrawnWithinItsField() {
    Varied fed = new Varied("/feeds/0/freshKgPerDay", 1.0, 5.0, null);
    UncertaintyRequest request =
        new UncertaintyRequest(
            StudyFixture.PLAN,
            64,
            1,
            List.of("/digester/load/codKgPerDay"),
            List.of(fed),
            null,
            null);
    UncertaintyRequest without =
        new UncertaintyRequest(
            StudyFixture.PLAN, 64, 1, List.of("/digester/load/codKgPerDay"), null, null, null);
    DrawnSpread wide = StudyFixture.run(request, 2).study().figures().get(0).spread();
    DrawnSpread narrow = StudyFixture.run(without, 2).study().figures().get(0).spread();
    assertThat(wide.deviation()).isGreaterThan(1.5 * narrow.deviation());
  }

  @Test
  void aStatedClimateIsDrawn() {
    ClimateSpread climate = new ClimateSpread(1.5, 8.0, 20.0, 30.0);
    String air = "/digester/monthly/ambientTemperatureC/0";
    UncertaintyRequest request =
        new UncertaintyRequest(StudyFixture.PLAN, 64, 1, List.of(air), null, climate, null);
    Studied<UncertaintyStudy> studied = StudyFixture.run(request, 2);
    assertThat(studied.study().figures().get(0).spread().deviation()).isCloseTo(1.5, within(0.1));
    assertThat(studied.notices()).extracting(Notice::code).doesNotContain("study.climate-certain");
  }

  @Test
  void correlatedNumbersGoTogether() {
    Varied first = new Varied("/feeds/0/freshKgPerDay", 1.0, 5.0, Distribution.UNIFORM);
    Varied second = new Varied("/people/count", 2.0, 6.0, Distribution.UNIFORM);
    List<String> outputs = List.of("/digester/load/codKgPerDay");
    DrawnSpread apart =
        StudyFixture.run(
                new UncertaintyRequest(
                    StudyFixture.PLAN, 128, 1, outputs, List.of(first, second), null, null),
                2)
            .study()
            .figures()
            .get(0)
            .spread();
    Correlated tie = new Correlated("/feeds/0/freshKgPerDay", "/people/count", 0.9);
    DrawnSpread tied =
        StudyFixture.run(
                new UncertaintyRequest(
                    StudyFixture.PLAN, 128, 1, outputs, List.of(first, second), null, List.of(tie)),
                2)
            .study()
            .figures()
            .get(0)
            .spread();
    assertThat(tied.deviation()).isGreaterThan(1.1 * apart.deviation());
  }

  @Test
  void verdictsHaveOddsThatAddUp() {
    UncertaintyStudy study =
        StudyFixture.run(request(StudyFixture.PLAN, 16, "digester.gasEnergyKWh", "verdicts"), 2)
            .study();
    assertThat(study.verdicts()).isNotEmpty();
    study
        .verdicts()
        .forEach(
            odds ->
                assertThat(odds.yesFraction() + odds.marginalFraction() + odds.noFraction())
                    .isCloseTo(1, within(1e-12)));
  }

  @Test
  void aStudyThatIsTooLargeIsToldWhatWouldFit() {
    Fault fault = faults(request(StudyFixture.PLAN, 16384, "verdicts")).get(0);
    assertThat(fault.code()).isEqualTo("study.too-large");
    assertThat(fault.pointer()).isEqualTo("/draws");
    assertThat(fault.allowed()).contains("5461");
    assertThat(
            new UncertaintyRequest(
                    StudyFixture.PLAN, 5461, 1, List.of("verdicts"), null, null, null)
                .prepare()
                .cost()
                .chainRuns())
        .isLessThanOrEqualTo(StudyCost.MOST);
  }

  @Test
  void everyWrongSettingIsToldAtOnce() {
    UncertaintyRequest request =
        new UncertaintyRequest(
            StudyFixture.PLAN,
            16,
            1,
            List.of("digester.gasEnergyKWh"),
            List.of(
                new Varied("/tank/liquidVolume", 1.0, 2.0, null),
                new Varied("/tank/liquidVolumeM3", 3.0, 2.0, null),
                new Varied(LEAK, 0.1, 2.0, null)),
            null,
            List.of(new Correlated(LEAK, "/nothing", 0.5)));
    assertThat(faults(request))
        .extracting(Fault::pointer)
        .contains("/vary/0/pointer", "/vary/1/low", "/vary/2/high", "/correlations/0/second");
  }

  @Test
  void impossibleCorrelationsAreRefused() {
    String rate = "/coefficients/digester.slow-rate-35";
    String share = "/coefficients/digester.slow-share";
    UncertaintyRequest request =
        new UncertaintyRequest(
            StudyFixture.PLAN,
            16,
            1,
            List.of("digester.gasEnergyKWh"),
            null,
            null,
            List.of(
                new Correlated(LEAK, rate, 0.95),
                new Correlated(rate, share, 0.95),
                new Correlated(LEAK, share, -0.95)));
    assertThat(faults(request))
        .extracting(Fault::code)
        .containsExactly("study.correlations-contradict");
  }
}
