package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;

class SweepTest {

  private static final List<String> TEMPERATURE = List.of("digester.meanLiquorTemperatureC");

  private static SweptField values(String pointer, Double... values) {
    return new SweptField(pointer, List.of(values), null, null, null);
  }

  private static SweepRequest sweep(SweptField... vary) {
    return new SweepRequest(StudyFixture.PLAN, List.of(vary), TEMPERATURE);
  }

  private static List<Fault> faults(SweptField... vary) {
    List<Fault> faults = new ArrayList<>();
    assertThatThrownBy(() -> sweep(vary).prepare())
        .isInstanceOfSatisfying(Faults.class, thrown -> faults.addAll(thrown.list()));
    return faults;
  }

  @Test
  void moreGlassIsWarmer() {
    SweepStudy study =
        StudyFixture.run(sweep(new SweptField("/cover/apertureM2", null, 1.0, 5.0, 5)), 2).study();
    assertThat(study.axes().get(0).values()).containsExactly(1.0, 2.0, 3.0, 4.0, 5.0);
    assertThat(study.axes().get(0).unit()).isEqualTo("m2");
    assertThat(study.figures().get(0).values()).hasSize(5).isSorted();
  }

  @Test
  void aGridRunsTheSecondForEachOfTheFirst() {
    SweepStudy study =
        StudyFixture.run(
                sweep(
                    values("/cover/apertureM2", 1.0, 5.0),
                    values("/tank/wallResistanceM2KW", 0.1, 0.5, 2.0)),
                1)
            .study();
    List<Double> warmth = study.figures().get(0).values();
    assertThat(study.points()).isEqualTo(6);
    assertThat(warmth.subList(0, 3)).isSorted();
    assertThat(warmth.get(3)).isGreaterThan(warmth.get(0));
  }

  @Test
  void theValueThatThePlanHasGivesThePlansOwnFigures() {
    SweepStudy study = StudyFixture.run(sweep(values("/tank/liquidVolumeM3", 5.0)), 1).study();
    double own =
        BaseRun.of(StudyFixture.PLAN)
            .outcome()
            .run()
            .digester()
            .estimate()
            .annual()
            .meanLiquorTemperatureC();
    assertThat(study.figures().get(0).values()).containsExactly(own);
  }

  @Test
  void aCoefficientCanBeSwept() {
    SweepStudy study =
        StudyFixture.run(
                new SweepRequest(
                    StudyFixture.PLAN,
                    List.of(values("/coefficients/digester.leak-share", 0.0, 0.5)),
                    List.of("digester.methaneNm3")),
                1)
            .study();
    List<Double> gas = study.figures().get(0).values();
    assertThat(gas.get(1)).isCloseTo(gas.get(0) / 2, org.assertj.core.api.Assertions.within(1e-6));
  }

  @Test
  void verdictsAreSweptWhereAskedFor() {
    SweepStudy study =
        StudyFixture.run(
                new SweepRequest(
                    StudyFixture.PLAN,
                    List.of(values("/feeds/0/freshKgPerDay", 0.0, 20.0)),
                    List.of("verdicts")),
                2)
            .study();
    assertThat(study.verdicts()).isNotEmpty();
    assertThat(study.verdicts().get(0).answers()).hasSize(2);
  }

  @Test
  void pointersAndRangesThatMakeNoSenseAreTold() {
    assertThat(faults(values("/tank/volume", 1.0)))
        .singleElement()
        .satisfies(f -> assertThat(f.code()).isEqualTo("loop.pointer-unknown-name"));
    assertThat(faults(values("/fuel/mashedFraction", 1.0)))
        .extracting(Fault::code)
        .containsExactly("loop.pointer-to-nothing");
    assertThat(faults(values("/tank", 1.0)))
        .extracting(Fault::code)
        .containsExactly("loop.pointer-to-no-number");
    assertThat(faults(values("tank", 1.0)))
        .extracting(Fault::code)
        .containsExactly("loop.no-pointer");
    assertThat(faults(new SweptField("/cover/apertureM2", null, 2.0, 2.0, 3)))
        .extracting(Fault::code)
        .containsExactly("study.empty-range");
    assertThat(faults(new SweptField("/cover/apertureM2", null, 2.0, null, 3)))
        .extracting(Fault::code)
        .containsExactly("study.values-or-range");
    assertThat(faults(values("/tank/compartments", 1.5)))
        .extracting(Fault::pointer)
        .containsExactly("/vary/0/values/0");
    assertThat(faults(values("/cover/tiltDeg", 45.0, 100.0)))
        .extracting(Fault::pointer)
        .containsExactly("/vary/0/values/1");
  }

  @Test
  void tooManyPointsAreRefused() {
    SweptField wide = new SweptField("/cover/apertureM2", null, 1.0, 5.0, 400);
    SweptField deep = new SweptField("/tank/wallResistanceM2KW", null, 0.1, 2.0, 2);
    assertThat(faults(wide, deep))
        .singleElement()
        .satisfies(f -> assertThat(f.params()).containsEntry("most", 500));
  }

  @Test
  void aPointThatMakesAnIllegalPlanIsNamedWithTheFieldAtFault() {
    assertThat(faults(values("/tank/liquidVolumeM3", 4.0, 0.3)))
        .anySatisfy(
            f -> {
              assertThat(f.pointer()).isEqualTo("/vary/0/values/1");
              assertThat(f.code()).isEqualTo("study.illegal-point");
              assertThat(f.params()).containsKey("field");
            });
  }
}
