package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.study.SizingStudy.Reach;

class SizingTest {

  private static final Freed GLASS = new Freed("/cover/apertureM2", 0.5, 10.0);
  private static final Freed WALL = new Freed("/tank/wallResistanceM2KW", 0.05, 3.0);

  private static Target warmth(double least) {
    return new Target("digester.meanLiquorTemperatureC", least, null);
  }

  private static SizingRequest request(List<Freed> free, Target... targets) {
    return new SizingRequest(StudyFixture.PLAN, free, List.of(targets));
  }

  private static double present() {
    return BaseRun.of(StudyFixture.PLAN)
        .outcome()
        .run()
        .digester()
        .estimate()
        .annual()
        .meanLiquorTemperatureC();
  }

  /** The glass that gives the warmth of the plan's own glass is that glass. */
  @Test
  void theSmallestGlassForTheWarmthOfFourSquareMetresIsFour() {
    SizingStudy study = StudyFixture.run(request(List.of(GLASS), warmth(present())), 2).study();
    assertThat(study.answer()).isEqualTo(Reach.MET);
    assertThat(study.sizes().get(0).value()).isCloseTo(4.0, within(0.001));
    assertThat(study.sizes().get(0).present()).isEqualTo(4.0);
    assertThat(study.targets().get(0).met()).isTrue();
    assertThat(study.reasons()).isEmpty();
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    SizingRequest request = request(List.of(GLASS, WALL), warmth(present() + 1));
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void twoFreeNumbersHaveAFrontier() {
    SizingStudy study =
        StudyFixture.run(request(List.of(GLASS, WALL), warmth(present() + 1)), 2).study();
    assertThat(study.answer()).isEqualTo(Reach.MET);
    List<SizingStudy.Pair> frontier = study.frontier();
    Double bare = frontier.get(0).first();
    Double thick = frontier.get(frontier.size() - 1).first();
    assertThat(thick).isNotNull();
    assertThat(bare == null || bare > thick).as("insulation saves glass").isTrue();
  }

  @Test
  void whatCannotBeReachedIsToldWithTheBestThatCan() {
    SizingStudy study = StudyFixture.run(request(List.of(GLASS), warmth(90)), 2).study();
    assertThat(study.answer()).isEqualTo(Reach.CANNOT);
    assertThat(study.reasons().get(0).code()).isEqualTo("study.cannot-reach");
    assertThat(study.targets().get(0).best()).isGreaterThan(present()).isLessThan(90);
    assertThat(study.sizes().get(0).value()).isGreaterThan(4);
  }

  @Test
  void aTargetOfMonthsIsMeantForEachOfThem() {
    Target everyMonth = new Target("/digester/monthly/liquorTemperatureC", 8.0, null);
    SizingStudy study = StudyFixture.run(request(List.of(GLASS), everyMonth), 2).study();
    double best = study.targets().get(0).value();
    Figure coldest =
        Figures.one(
            "digester.coldestMonthC",
            BaseRun.of(StudyFixture.PLAN).outcome(),
            "",
            new ArrayList<>());
    assertThat(study.targets().get(0).present())
        .isEqualTo(coldest.value(BaseRun.of(StudyFixture.PLAN).outcome()));
    assertThat(best).isGreaterThanOrEqualTo(8.0);
  }

  @Test
  void countsStayWhole() {
    SizingStudy study =
        StudyFixture.run(
                request(
                    List.of(new Freed("/people/count", 1.0, 8.0)),
                    new Target("/digester/load/codKgPerDay", 0.9, null)),
                2)
            .study();
    double people = study.sizes().get(0).value();
    assertThat(people).isEqualTo(Math.rint(people));
  }

  @Test
  void targetsThatContradictThemselvesAreRefused() {
    assertThat(
            faults(
                request(
                    List.of(GLASS),
                    warmth(20),
                    new Target("digester.meanLiquorTemperatureC", null, 15.0))))
        .containsExactly("study.contradicting-targets");
    assertThat(
            faults(
                request(List.of(GLASS), new Target("digester.meanLiquorTemperatureC", 1.0, 2.0))))
        .containsExactly("study.one-bound");
    assertThat(
            faults(
                request(
                    List.of(GLASS), new Target("digester.cookingDemandMetFraction", 1.5, null))))
        .containsExactly("study.impossible-target");
    assertThat(faults(request(List.of(new Freed("/cover/apertureM2", 5.0, 5.0)), warmth(10))))
        .containsExactly("study.low-not-below-high");
    assertThat(faults(request(List.of(GLASS, GLASS), warmth(10))))
        .containsExactly("study.freed-twice");
  }

  private static List<String> faults(SizingRequest request) {
    List<String> codes = new ArrayList<>();
    assertThatThrownBy(request::prepare)
        .isInstanceOfSatisfying(
            Faults.class, thrown -> thrown.list().stream().map(Fault::code).forEach(codes::add));
    return codes;
  }
}
