package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.Verdict;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Distribution;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;
import org.marshlight.statistics.SobolPoints;
import org.marshlight.study.UncertaintyStudy.FigureSpread;
import org.marshlight.wetland.BedDesign;

class UncertaintyTest {

  private static final String STRAW = "/compost/ingredients/0/freshKgPerYear";
  private static final String MANURE = "/compost/ingredients/1/freshKgPerYear";
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
    UncertaintyRequest tank = request(StudyFixture.TANK, 17, "annual", "monthly");
    assertThat(StudyFixture.run(tank, 2)).isEqualTo(StudyFixture.run(tank, 1));
    UncertaintyRequest heap = request(StudyFixture.HEAP, 17, "annual", "decision", "verdicts");
    assertThat(StudyFixture.run(heap, 2)).isEqualTo(StudyFixture.run(heap, 1));
  }

  @Test
  void percentilesStandInOrderAndHoldTheCentralValue() {
    UncertaintyStudy study =
        StudyFixture.run(
                new UncertaintyRequest(StudyFixture.PLAN, 32, null, null, null, null, null), 2)
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
        StudyFixture.run(request(StudyFixture.HEAP, 64, "compost.finishedKg"), 2).study();
    FigureSpread compost = study.figures().get(0);
    assertThat(compost.modelError().p50())
        .isCloseTo(compost.central(), within(0.05 * compost.central()));
    assertThat(compost.together().deviation()).isGreaterThan(compost.modelError().deviation());
    double share = compost.modelError().p90() / compost.central();
    assertThat(share).as("the book's ninetieth percentile").isCloseTo(1.25, within(0.03));
  }

  @Test
  void aModelErrorThatThePlanSetsIsNotDrawn() {
    Plan plan = StudyFixture.with(StudyFixture.HEAP, Map.of("study.discrepancy.compost", 1.2));
    FigureSpread compost =
        StudyFixture.run(request(plan, 16, "compost.finishedKg"), 2).study().figures().get(0);
    assertThat(compost.modelError().p5()).isCloseTo(1.2 * compost.central(), within(1e-9));
    assertThat(compost.modelError().deviation()).isCloseTo(0, within(1e-9));
  }

  private static int uncertainNumbers(Plan plan, String output) {
    return StudyFixture.run(request(plan, 16, output), 1).study().uncertainNumbers();
  }

  @Test
  void aCoefficientThatThePlanSetsIsNotDrawn() {
    Plan set = StudyFixture.with(StudyFixture.HEAP, Map.of("ingredients.straw.moisture", 0.1));
    assertThat(uncertainNumbers(set, "compost.finishedKg"))
        .isEqualTo(uncertainNumbers(StudyFixture.HEAP, "compost.finishedKg") - 1);
  }

  /** Gases of a fuel and of the climate matter to no stage, but to what is decided. */
  @Test
  void whatOnlyDecisionsReadIsDrawnWhereTheyAreFollowed() {
    BaseRun base = BaseRun.of(StudyFixture.TANK);
    String fuel = base.outcome().decision().greenhouseGas().displacedFuel();
    DrawSpace stages = space(base, "annual");
    DrawSpace whole = space(base, "decision");
    for (String id : List.of("fuels." + fuel + ".carbon-dioxide", "decision.burner-efficiency")) {
      assertThat(stages.place("/coefficients/" + id)).isNegative();
      assertThat(whole.place("/coefficients/" + id)).isNotNegative();
    }
  }

  private static DrawSpace space(BaseRun base, String word) {
    Figures figures = Figures.of(List.of(word), base.outcome(), "/outputs");
    return DrawSpace.of(base, figures, List.of(), null, new ArrayList<>());
  }

  /** What draws share with the plan changes nothing: each is the plan with its own numbers. */
  @Test
  void aDrawIsThePlanWithTheNumbersDrawn() {
    BaseRun base = BaseRun.of(StudyFixture.PLAN);
    Figures figures = Figures.annual(base.outcome());
    DrawSpace space = DrawSpace.of(base, figures, List.of(), null, new ArrayList<>());
    for (double[] point : SobolPoints.scrambled(4, space.factors().size(), 7)) {
      Map<String, Double> drawn = new HashMap<>();
      for (int i = 0; i < point.length; i++) {
        Factor.OfCoefficient factor = (Factor.OfCoefficient) space.factors().get(i);
        drawn.put(factor.row().id(), factor.spread().quantile(point[i]));
      }
      Plan plan = base.plan();
      CoefficientSet set = base.set().with(drawn);
      assertThat(figures.values(space.run(point, new Sites(base))))
          .containsExactly(figures.values(Outcome.of(plan, set, PreparedSite.of(plan, set))));
    }
  }

  @Test
  void whatLiesDownstreamOfAllFiguresIsNeitherRunNorDrawn() {
    BaseRun base = BaseRun.of(StudyFixture.PLAN);
    DrawSpace tank = space(base, "digester.gasEnergyKWh");
    DrawSpace bed = space(base, "wetland.worstMonthBod5MgL");
    assertThat(tank.stage()).isEqualTo(Stage.DIGESTER);
    assertThat(bed.stage()).isEqualTo(Stage.WETLAND);
    assertThat(space(base, "verdicts").stage()).isEqualTo(Stage.LOOP);
    assertThat(bed.factors()).hasSizeGreaterThan(tank.factors().size());
    assertThat(tank.factors()).noneMatch(f -> f.id().startsWith("/coefficients/wetland."));
    assertThat(bed.factors()).anyMatch(f -> f.id().startsWith("/coefficients/digester."));
  }

  private static DrawnSpread mix(List<Varied> vary, List<Correlated> ties) {
    UncertaintyRequest request =
        new UncertaintyRequest(
            StudyFixture.HEAP, 128, 1, List.of("/compost/mix/freshKg"), vary, null, ties);
    return StudyFixture.run(request, 2).study().figures().get(0).spread();
  }

  /** Uniform between 87.5 and 212.5, an eighth of the span beyond either percentile. */
  @Test
  void aStatedRangeIsDrawn() {
    DrawnSpread spread = mix(List.of(new Varied(STRAW, 100.0, 200.0, Distribution.UNIFORM)), null);
    assertThat(spread.p10()).isCloseTo(700, within(1.0));
    assertThat(spread.p90()).isCloseTo(800, within(1.0));
    assertThat(spread.deviation()).isCloseTo(125 / Math.sqrt(12), within(0.5));
  }

  @Test
  void aStatedClimateIsDrawn() {
    ClimateSpread climate = new ClimateSpread(1.5, 8.0, 20.0, 30.0);
    String air = "/digester/monthly/ambientTemperatureC/0";
    UncertaintyRequest request =
        new UncertaintyRequest(StudyFixture.TANK, 64, 1, List.of(air), null, climate, null);
    Studied<UncertaintyStudy> studied = StudyFixture.run(request, 2);
    assertThat(studied.study().figures().get(0).spread().deviation()).isCloseTo(1.5, within(0.1));
    assertThat(studied.notices()).extracting(Notice::code).doesNotContain("study.climate-certain");
  }

  /** The variance of a sum: for uniform numbers rank correlation and correlation are the same. */
  @Test
  void correlatedNumbersGoTogether() {
    List<Varied> vary =
        List.of(
            new Varied(STRAW, 100.0, 200.0, Distribution.UNIFORM),
            new Varied(MANURE, 500.0, 700.0, Distribution.UNIFORM));
    double straw = 125 / Math.sqrt(12);
    double manure = 250 / Math.sqrt(12);
    double squares = straw * straw + manure * manure;
    assertThat(mix(vary, null).deviation()).isCloseTo(Math.sqrt(squares), within(2.0));
    assertThat(mix(vary, List.of(new Correlated(STRAW, MANURE, 0.9))).deviation())
        .isCloseTo(Math.sqrt(squares + 2 * 0.9 * straw * manure), within(2.0));
  }

  @Test
  void verdictsHaveOddsThatAddUp() {
    UncertaintyStudy study =
        StudyFixture.run(request(StudyFixture.HEAP, 16, "verdicts"), 2).study();
    assertThat(study.verdicts()).isNotEmpty();
    study
        .verdicts()
        .forEach(
            odds ->
                assertThat(odds.yesFraction() + odds.marginalFraction() + odds.noFraction())
                    .isCloseTo(1, within(1e-12)));
  }

  @Test
  void theVerdictsOfSeveralBedsAreToldApart() {
    Plan plan =
        RecordShape.changed(
            StudyFixture.PLAN,
            "beds",
            List.of(
                StudyFixture.record(BedDesign.class, "areaM2", 20.0),
                StudyFixture.record(BedDesign.class, "areaM2", 2.0)));
    List<Verdict> verdicts = BaseRun.of(plan).outcome().verdicts();
    assertThat(verdicts).filteredOn(v -> v.component() == Verdict.Component.BED).hasSize(2);
    assertThat(Judged.answers(verdicts)).hasSameSizeAs(verdicts);
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
