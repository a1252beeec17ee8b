package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.BuildOrderStudy;
import org.marshlight.decision.BuildOrderStudy.LeftOut;
import org.marshlight.decision.BuildOrderStudy.Phase;
import org.marshlight.decision.BuildOrderStudy.Step;
import org.marshlight.economy.CapitalDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.economy.PlanPart;
import org.marshlight.loop.Plan;

class BuildOrderTest {

  private static final double TANK = 2000;
  private static final double BEDS = 1500;

  /** The homestead with cheap pipes and dear fuel, so that gas and glass both pay. */
  private static Plan priced(Object... more) {
    List<Object> money =
        new ArrayList<>(
            List.of(
                "currency",
                "EUR",
                "fuelPricePerKWh",
                1.0,
                "capital",
                StudyFixture.record(
                    CapitalDesign.class, "tank", TANK, "cover", 50.0, "gas", 100.0, "beds", BEDS)));
    money.addAll(List.of(more));
    return RecordShape.changed(
        StudyFixture.plan(Map.of()),
        "money",
        StudyFixture.record(MoneyDesign.class, money.toArray()));
  }

  private static BuildOrderStudy study(Plan plan) {
    return StudyFixture.run(new BuildOrderRequest(plan), 2).study();
  }

  private static List<Step> steps(BuildOrderStudy study) {
    return study.phases().stream().map(Phase::step).toList();
  }

  @Test
  void whatAPartNeedsIsBuiltBeforeIt() {
    BuildOrderStudy study = study(priced());
    assertThat(steps(study)).contains(Step.TANK, Step.GAS_CAPTURE, Step.GLASS);
    for (Phase phase : study.phases()) {
      assertThat(steps(study).subList(0, phase.number() - 1)).containsAll(phase.needs());
    }
  }

  @Test
  void marginalGainsAddUpToThoseOfWhatIsBuilt() {
    BuildOrderStudy study = study(priced());
    double built = study.phases().stream().mapToDouble(Phase::marginalUsefulKWh).sum();
    double whole = BaseRun.of(priced()).outcome().estimate().energyReturn().gasKWh();
    assertThat(study.leftOut().stream().map(LeftOut::step).toList())
        .doesNotContain(Step.GAS_CAPTURE, Step.GLASS, Step.CO_FEEDING);
    assertThat(built).isCloseTo(whole, within(1e-6 * whole));
  }

  @Test
  void theBudgetIsKeptAndWhatItLeavesOutSaysSo() {
    BuildOrderStudy study = study(priced("budget", TANK + 200));
    assertThat(study.spent()).isLessThanOrEqualTo(TANK + 200);
    assertThat(study.leftOut())
        .anySatisfy(
            left -> {
              assertThat(left.step()).isEqualTo(Step.BEDS);
              assertThat(left.reason().code()).isEqualTo("decision.order-over-budget");
            });
  }

  @Test
  void whatStandsIsNotBuiltAgainAndCostsNothing() {
    BuildOrderStudy study = study(priced("owned", List.of(PlanPart.TANK, PlanPart.BEDS)));
    assertThat(steps(study)).doesNotContain(Step.TANK, Step.BEDS).contains(Step.GAS_CAPTURE);
    assertThat(study.spent()).isLessThanOrEqualTo(150);
  }

  /** Beds that stand before any tank wait for it. */
  @Test
  void whatStandsWithoutWhatItNeedsIsIdleUntilThen() {
    BuildOrderStudy study = study(priced("owned", List.of(PlanPart.BEDS, PlanPart.GAS)));
    assertThat(steps(study)).startsWith(Step.TANK).doesNotContain(Step.BEDS, Step.GAS_CAPTURE);
    assertThat(study.phases().get(0).marginalUsefulKWh())
        .as("the tank's gas goes to pipes that stand")
        .isPositive();
  }

  @Test
  void glassWithoutGasCaptureIsLeftOutForWantOfIt() {
    BuildOrderStudy study = study(RecordShape.changed(priced(), "gas", null));
    assertThat(study.leftOut())
        .anySatisfy(
            left -> {
              assertThat(left.step()).isEqualTo(Step.GLASS);
              assertThat(left.reason().code()).isEqualTo("decision.order-needs");
              assertThat(left.reason().params()).containsEntry("needs", "gas-capture");
            });
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    BuildOrderRequest request = new BuildOrderRequest(priced());
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }
}
