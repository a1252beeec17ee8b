package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.BreakEvenStudy;
import org.marshlight.decision.BreakEvenStudy.Change;
import org.marshlight.decision.BreakEvenStudy.Outcome;
import org.marshlight.decision.Lever;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.digester.GasDesign;
import org.marshlight.economy.CapitalDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.loop.Plan;

class BreakEvenTest {

  private static final double PRESSURE_KPA = 1.5;

  /** The homestead with a store whose pressure is stated. */
  private static Plan safe(Map<String, Double> coefficients) {
    Plan plan = StudyFixture.plan(coefficients);
    GasDesign gas = RecordShape.changed(plan.gas(), "pressureKPa", PRESSURE_KPA);
    return RecordShape.changed(plan, "gas", gas);
  }

  private static Plan missing(double usefulKWh) {
    return safe(Map.of("decision.gas-yes", usefulKWh));
  }

  private static BreakEvenStudy study(Plan plan, Lever... levers) {
    return StudyFixture.run(
            new BreakEvenRequest(plan, Component.GAS_CAPTURE, null, List.of(levers)), 2)
        .study();
  }

  private static Change change(Plan plan, Lever lever) {
    return study(plan, lever).changes().get(0);
  }

  private static double useful() {
    return study(safe(Map.of()), Lever.FEED).now().difference().usefulEnergyKWh();
  }

  @Test
  void aVerdictThatIsYesNeedsNoChange() {
    Change change = change(missing(useful() / 2), Lever.FEED);
    assertThat(change.outcome()).isEqualTo(Outcome.ALREADY);
    assertThat(change.runs()).isZero();
  }

  /** At the change that was found the verdict is yes, and a little short of it it is not. */
  @Test
  void whatIsFoundIsWhereTheVerdictTurns() {
    Plan plan = missing(1.5 * useful());
    Change change = change(plan, Lever.FEED);
    assertThat(change.outcome()).isEqualTo(Outcome.FOUND);
    assertThat(change.needed()).isGreaterThan(change.now());
    assertThat(answer(plan, change.needed())).isEqualTo(Worth.YES);
    assertThat(answer(plan, 0.99 * change.needed())).isNotEqualTo(Worth.YES);
  }

  private static Worth answer(Plan plan, double feedKg) {
    var feed = RecordShape.changed(plan.feeds().get(0), "freshKgPerDay", feedKg);
    return BaseRun.of(RecordShape.changed(plan, "feeds", List.of(feed)))
        .outcome()
        .verdicts()
        .stream()
        .filter(verdict -> verdict.component() == Component.GAS_CAPTURE)
        .map(Verdict::answer)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aHazardThatIsLeftOpenHoldsTheYesBackAndIsNamed() {
    Plan open = StudyFixture.plan(Map.of("decision.gas-yes", useful() / 2));
    Change change = change(open, Lever.FEED);
    assertThat(change.outcome()).isEqualTo(Outcome.HELD_BACK);
    assertThat(change.needed()).isEqualTo(change.now());
    assertThat(change.reason().text()).contains("pressure of the gas store is not stated");
  }

  @Test
  void whatNoAmountTurnsTellsTheBestThatWasReached() {
    Change change = change(missing(900_000), Lever.INSULATION);
    assertThat(change.outcome()).isEqualTo(Outcome.NONE);
    assertThat(change.needed()).isNull();
    assertThat(change.bestAboveYes()).isNegative();
    assertThat(change.reason().text()).contains("yes begins at 900000 kWh a year");
  }

  private static Plan priced(Double tankCost, double gasCost) {
    return RecordShape.changed(
        safe(Map.of()),
        "money",
        StudyFixture.record(
            MoneyDesign.class,
            "capital",
            StudyFixture.record(CapitalDesign.class, "tank", tankCost, "gas", gasCost),
            "fuelPricePerKWh",
            0.2));
  }

  /** A larger tank of a stated cost costs in proportion to its volume. */
  @Test
  void aLargerTankIsProposedOnlyWhereItPaysForItself() {
    double expensive =
        1.05 * study(priced(0.0, 0), Lever.RETENTION).now().difference().money().least();
    Change free = change(priced(0.0, expensive), Lever.RETENTION);
    assertThat(free.outcome()).isEqualTo(Outcome.FOUND);
    assertThat(free.needed()).isGreaterThan(free.now());
    Change charged = change(priced(3000.0, expensive), Lever.RETENTION);
    assertThat(charged.outcome()).isEqualTo(Outcome.NONE);
    assertThat(charged.bestAboveYes()).isLessThan(free.bestAboveYes());
  }

  @Test
  void noChangeOfTheTankIsProposedWhoseCostMoneyDoesNotCharge() {
    for (Change change : study(priced(null, 4500), Lever.RETENTION, Lever.INSULATION).changes()) {
      assertThat(change.outcome()).isEqualTo(Outcome.NO_LEVER);
      assertThat(change.needed()).isNull();
      assertThat(change.reason().code()).isEqualTo("decision.break-even-cost-not-given");
    }
  }

  @Test
  void whereNoMoneyIsToldALargerTankIsProposedAndItsCostSaidNotToCount() {
    Change change = change(missing(1.05 * useful()), Lever.RETENTION);
    assertThat(change.outcome()).isEqualTo(Outcome.FOUND);
    assertThat(change.reason().text()).contains("what that change costs is not counted");
  }

  @Test
  void aTankThatTurnsNothingIsNotProposed() {
    Plan open = StudyFixture.plan(Map.of("decision.gas-yes", 1.05 * useful()));
    Change change = change(open, Lever.RETENTION);
    assertThat(change.outcome()).isEqualTo(Outcome.HELD_BACK);
    assertThat(change.needed()).isNull();
    assertThat(change.reason().text()).contains("pressure of the gas store is not stated");
  }

  @Test
  void aPlanWithoutCostsHasNoPriceToMove() {
    assertThat(change(missing(900_000), Lever.PRICE).outcome()).isEqualTo(Outcome.NO_LEVER);
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    BreakEvenRequest request =
        new BreakEvenRequest(missing(1.5 * useful()), Component.GAS_CAPTURE, null, null);
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void whatMakesNoSenseIsRefusedByItsField() {
    assertRefused(new BreakEvenRequest(safe(Map.of()), Component.BED, null, null), "/bed");
    assertRefused(new BreakEvenRequest(safe(Map.of()), Component.BED, "reed", null), "/bed");
    assertRefused(new BreakEvenRequest(safe(Map.of()), Component.GLASS, "reed", null), "/bed");
    assertRefused(
        new BreakEvenRequest(
            safe(Map.of()), Component.GLASS, null, List.of(Lever.FEED, Lever.FEED)),
        "/levers/1");
  }

  private static void assertRefused(BreakEvenRequest request, String pointer) {
    assertThatThrownBy(request::prepare)
        .isInstanceOfSatisfying(
            Faults.class,
            faults ->
                assertThat(faults.list()).extracting(Fault::pointer).containsExactly(pointer));
  }
}
