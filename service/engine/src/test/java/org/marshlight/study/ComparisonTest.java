package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.Verdict;
import org.marshlight.loop.Plan;
import org.marshlight.study.ComparisonStudy.ComparedFigure;

class ComparisonTest {

  private static final Plan UNCOVERED = RecordShape.changed(StudyFixture.PLAN, "cover", null);

  private static ComparisonRequest request(VariantPlan... variants) {
    return new ComparisonRequest(StudyFixture.PLAN, List.of(variants), null);
  }

  @Test
  void figuresStandSideBySideWithTheirDifference() {
    ComparisonStudy study =
        StudyFixture.run(
                request(
                    new VariantPlan("no glass", UNCOVERED),
                    new VariantPlan("the same", StudyFixture.PLAN)),
                2)
            .study();
    ComparedFigure warmth =
        study.figures().stream()
            .filter(f -> f.name().equals("digester.meanLiquorTemperatureC"))
            .findFirst()
            .orElseThrow();
    assertThat(warmth.differences().get(0)).isNegative();
    assertThat(warmth.variants().get(0)).isEqualTo(warmth.base() + warmth.differences().get(0));
    assertThat(study.figures()).allSatisfy(f -> assertThat(f.differences().get(1)).isZero());
    assertThat(study.variants().get(1).verdicts()).isEmpty();
  }

  @Test
  void aPartThatIsLostIsToldWithItsReasons() {
    ComparisonStudy study =
        StudyFixture.run(request(new VariantPlan("no glass", UNCOVERED)), 1).study();
    assertThat(study.variants().get(0).verdicts())
        .anySatisfy(
            verdict -> {
              assertThat(verdict.component()).isEqualTo(Verdict.Component.GLASS);
              assertThat(verdict.variant()).isNull();
              assertThat(verdict.reasonsLost()).isNotEmpty();
            });
  }

  @Test
  void aPartThatOnlyAVariantHasIsComparedToo() {
    Plan bare = RecordShape.changed(StudyFixture.PLAN, "beds", null);
    ComparisonStudy study =
        StudyFixture.run(
                new ComparisonRequest(
                    bare, List.of(new VariantPlan("with a bed", StudyFixture.PLAN)), null),
                1)
            .study();
    assertThat(study.figures())
        .anySatisfy(
            figure -> {
              assertThat(figure.name()).isEqualTo("wetland.worstMonthBod5MgL");
              assertThat(figure.base()).isNull();
              assertThat(figure.variants().get(0)).isPositive();
              assertThat(figure.differences().get(0)).isNull();
            });
  }

  @Test
  void theCautionsOfVariantsAreToldToo() {
    Studied<ComparisonStudy> studied =
        StudyFixture.run(request(new VariantPlan("no glass", UNCOVERED)), 1);
    assertThat(studied.considered()).hasSize(1);
  }

  @Test
  void anIllegalVariantIsNamedWithItsField() {
    Plan tiny =
        RecordShape.changed(
            StudyFixture.PLAN,
            "tank",
            RecordShape.changed(StudyFixture.PLAN.tank(), "liquidVolumeM3", 0.01));
    assertThatThrownBy(() -> request(new VariantPlan("a tiny tank", tiny)).prepare())
        .isInstanceOfSatisfying(
            Faults.class,
            faults ->
                assertThat(faults.list())
                    .anySatisfy(
                        fault -> {
                          assertThat(fault.pointer())
                              .isEqualTo("/variants/0/plan/tank/liquidVolumeM3");
                          assertThat(fault.detail()).contains("a tiny tank");
                        }));
  }
}
