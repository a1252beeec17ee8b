package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.Reason;
import org.marshlight.economy.CapitalDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.loop.Plan;
import org.marshlight.study.SizingStudy.Reach;

class SizingTest {

  private static final Freed GLASS = new Freed("/cover/apertureM2", 0.5, 10.0);
  private static final BaseRun BASE = BaseRun.of(StudyFixture.TANK);

  private static Target warmth(double least) {
    return new Target("digester.meanLiquorTemperatureC", least, null);
  }

  private static SizingRequest request(List<Freed> free, Target... targets) {
    return new SizingRequest(StudyFixture.TANK, free, List.of(targets));
  }

  private static double present() {
    return BASE.outcome().run().digester().estimate().annual().meanLiquorTemperatureC();
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

  /** A mix that must come to a mass, and the two things it is put together from. */
  private static SizingRequest mixOf(double least) {
    return new SizingRequest(
        StudyFixture.HEAP,
        List.of(
            new Freed("/compost/ingredients/0/freshKgPerYear", 100.0, 1000.0),
            new Freed("/compost/ingredients/1/freshKgPerYear", 100.0, 1000.0)),
        List.of(new Target("/compost/mix/freshKg", least, null)));
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    assertThat(StudyFixture.run(mixOf(800), 2)).isEqualTo(StudyFixture.run(mixOf(800), 1));
  }

  /** What one does not give the other must, down to its least value. */
  @Test
  void twoFreeNumbersHaveAFrontier() {
    SizingStudy study = StudyFixture.run(mixOf(800), 2).study();
    assertThat(study.answer()).isEqualTo(Reach.MET);
    assertThat(study.frontier()).hasSize(13);
    for (SizingStudy.Pair pair : study.frontier()) {
      assertThat(pair.first()).isCloseTo(Math.max(100, 800 - pair.second()), within(0.2));
    }
    assertThat(study.sizes().get(0).value() + study.sizes().get(1).value())
        .isCloseTo(800, within(0.2));
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
    Figure coldest = Figures.one("digester.coldestMonthC", BASE.outcome(), "", new ArrayList<>());
    assertThat(study.targets().get(0).present()).isEqualTo(coldest.value(BASE.outcome()));
    assertThat(best).isGreaterThanOrEqualTo(8.0);
  }

  private static Plan priced(double tankCost) {
    CapitalDesign capital = StudyFixture.record(CapitalDesign.class, "tank", tankCost);
    return RecordShape.changed(
        StudyFixture.TANK,
        "money",
        StudyFixture.record(
            MoneyDesign.class, "capital", capital, "fuelPricePerKWh", 0.5, "lifeYears", 20.0));
  }

  private static SizingStudy paidBackBy(Plan plan, double years) {
    SizingRequest request =
        new SizingRequest(
            plan,
            List.of(new Freed("/people/count", 3.0, 5.0)),
            List.of(new Target("money.discountedPaybackYears", null, years)));
    return StudyFixture.run(request, 2).study();
  }

  private static double paybackYears(int people) {
    PeopleDesign household = StudyFixture.record(PeopleDesign.class, "count", people);
    Plan plan = RecordShape.changed(priced(500), "people", household);
    return BaseRun.of(plan).outcome().decision().money().appraisal().discountedPaybackYears();
  }

  @Test
  void aPaybackIsATargetLikeAnyOther() {
    double three = paybackYears(3);
    SizingStudy study = paidBackBy(priced(500), Math.max(three, paybackYears(4)));
    assertThat(study.answer()).isEqualTo(Reach.MET);
    assertThat(study.sizes().get(0).value()).isEqualTo(3);
    assertThat(study.targets().get(0).value()).isEqualTo(three);
    assertThat(study.cost().chainRuns()).isGreaterThan(3 * StudyCost.VERDICTS);
  }

  @Test
  void aPaybackThatNeverComesIsNotMet() {
    SizingStudy study = paidBackBy(priced(1e6), 20);
    assertThat(study.answer()).isEqualTo(Reach.CANNOT);
    assertThat(study.reasons()).extracting(Reason::code).containsExactly("study.cannot-no-value");
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
