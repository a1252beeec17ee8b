package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.marshlight.decision.Verdict.Component.BED;
import static org.marshlight.decision.Verdict.Component.BEDS;
import static org.marshlight.decision.Verdict.Component.COMPOST;
import static org.marshlight.decision.Verdict.Component.CO_FEEDING;
import static org.marshlight.decision.Verdict.Component.FUEL_ALCOHOL;
import static org.marshlight.decision.Verdict.Component.GAS_CAPTURE;
import static org.marshlight.decision.Verdict.Component.GLASS;
import static org.marshlight.decision.Verdict.Component.NIGHT_INSULATION;
import static org.marshlight.decision.Verdict.Worth.MARGINAL;
import static org.marshlight.decision.Verdict.Worth.NO;
import static org.marshlight.decision.Verdict.Worth.YES;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.marshlight.Studies;
import org.marshlight.decision.BreakEvenStudy;
import org.marshlight.decision.BreakEvenStudy.Change;
import org.marshlight.decision.BreakEvenStudy.Outcome;
import org.marshlight.decision.BuildOrderStudy;
import org.marshlight.decision.BuildOrderStudy.Phase;
import org.marshlight.decision.BuildOrderStudy.Step;
import org.marshlight.decision.Lever;
import org.marshlight.decision.Reason;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.study.BreakEvenRequest;
import org.marshlight.study.BuildOrderRequest;
import org.marshlight.study.StudyRequest;
import org.marshlight.study.Workbench;

/** The ends that the sample plans come to, as the planner's guide tells them. */
class SampleVerdictsTest {

  private static List<Verdict> verdicts(String sample) {
    return SamplePlans.answer(sample).estimate().verdicts();
  }

  private static Map<Component, Worth> ends(String sample) {
    Map<Component, Worth> ends = new TreeMap<>();
    for (Verdict verdict : verdicts(sample)) {
      if (verdict.component() != BED) {
        ends.put(verdict.component(), verdict.answer());
      }
    }
    return ends;
  }

  private static <T extends Record, R extends Record & StudyRequest<T>> T study(
      String sample, Class<R> type) {
    StudyDocument<T> document = StudyDocument.read(SamplePlans.request(sample), type);
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      return Studies.open(document.request(), document.planSha256())
          .run(new Workbench(pool, 2, Workbench.Watcher.NONE))
          .study();
    } finally {
      pool.shutdownNow();
    }
  }

  @Test
  void theHillSmallholdingKeepsItsBedsAndHeapAtMost() {
    assertThat(ends("loop-hill-smallholding"))
        .isEqualTo(
            Map.of(
                GAS_CAPTURE, NO,
                GLASS, NO,
                NIGHT_INSULATION, NO,
                CO_FEEDING, MARGINAL,
                BEDS, MARGINAL,
                FUEL_ALCOHOL, NO,
                COMPOST, MARGINAL));
  }

  @Test
  void nothingOfTheColdHolidayHouseIsWorthBuilding() {
    assertThat(ends("loop-cold-holiday-house"))
        .isEqualTo(
            Map.of(
                GAS_CAPTURE, NO,
                GLASS, NO,
                NIGHT_INSULATION, NO,
                BEDS, NO,
                FUEL_ALCOHOL, NO,
                COMPOST, NO));
  }

  @Test
  void gasOfTheWarmFarmIsWorthCatchingAndItsGlassIsNot() {
    assertThat(ends("loop-warm-farm"))
        .isEqualTo(Map.of(GAS_CAPTURE, YES, GLASS, NO, CO_FEEDING, YES));
  }

  @Test
  void feedingTurnsTheGasOfFivePeople() {
    assertThat(ends("loop-canteen-scraps")).isEqualTo(Map.of(GAS_CAPTURE, YES, CO_FEEDING, YES));
    BreakEvenStudy unfed = study("break-even-gas-by-feeding", BreakEvenRequest.class);
    assertThat(unfed.now().answer()).isEqualTo(NO);
    Map<Lever, Change> changes =
        unfed.changes().stream().collect(Collectors.toMap(Change::lever, change -> change));
    Change feed = changes.get(Lever.FEED);
    assertThat(feed.outcome()).isEqualTo(Outcome.FOUND);
    assertThat(feed.needed()).isBetween(1.0, 5.0);
    assertThat(changes.get(Lever.PEOPLE).needed())
        .as("more than three times the household")
        .isGreaterThan(3 * changes.get(Lever.PEOPLE).now());
    assertThat(changes.get(Lever.INSULATION).outcome())
        .as("what insulation costs is not given")
        .isEqualTo(Outcome.NO_LEVER);
    assertThat(changes.get(Lever.RETENTION).outcome()).isEqualTo(Outcome.NONE);
    assertThat(changes.get(Lever.GLASS).outcome()).isEqualTo(Outcome.NO_LEVER);
    assertThat(changes.get(Lever.PRICE).needed())
        .as("a price beyond twice that of today")
        .isGreaterThan(2 * changes.get(Lever.PRICE).now());
  }

  @Test
  void alcoholOfTheGardenSchoolNeverIsWorthIt() {
    assertThat(ends("loop-garden-school"))
        .isEqualTo(
            Map.of(
                GAS_CAPTURE, YES,
                CO_FEEDING, YES,
                BEDS, MARGINAL,
                FUEL_ALCOHOL, NO,
                COMPOST, MARGINAL));
    BreakEvenStudy alcohol = study("break-even-alcohol-never", BreakEvenRequest.class);
    assertThat(alcohol.now().answer()).isEqualTo(NO);
    assertThat(alcohol.changes()).extracting(Change::lever).containsExactly(Lever.values());
    assertThat(alcohol.changes())
        .extracting(Change::outcome)
        .containsOnly(Outcome.NONE, Outcome.NO_LEVER);
    assertThat(alcohol.changes()).allMatch(change -> change.needed() == null);
  }

  @Test
  void theGardenSchoolBuildsWhatItsBudgetAllows() {
    BuildOrderStudy order = study("build-order-within-budget", BuildOrderRequest.class);
    assertThat(order.phases())
        .extracting(Phase::step)
        .containsExactly(Step.TANK, Step.GAS_CAPTURE, Step.CO_FEEDING, Step.COMPOST);
    assertThat(order.spent()).isLessThanOrEqualTo(order.budget());
    assertThat(order.leftOut())
        .extracting(left -> left.reason().code())
        .containsExactly("decision.order-over-budget", "decision.order-needs");
    assertThat(order.readings())
        .isNotEmpty()
        .allSatisfy(
            reading ->
                assertThat(reading.changes())
                    .isNotEmpty()
                    .allMatch(turn -> turn.now() != turn.then()));
  }

  @Test
  void theSamplesEndDifferently() {
    List<Map<Component, Worth>> ends = new ArrayList<>();
    for (String sample :
        List.of(
            "loop-hill-smallholding",
            "loop-cold-holiday-house",
            "loop-warm-farm",
            "loop-canteen-scraps",
            "loop-garden-school")) {
      ends.add(ends(sample));
    }
    assertThat(ends).doesNotHaveDuplicates();
  }

  @Test
  void aNoByMoneyThatIsNeverPaidBackSaysSo() {
    Verdict glass =
        verdicts("loop-warm-farm").stream()
            .filter(verdict -> verdict.component() == GLASS)
            .findFirst()
            .orElseThrow();
    assertThat(glass.difference().money().neverPays()).isTrue();
    assertThat(glass.difference().money().discountedPaybackYears()).isNull();
    assertThat(glass.reasons()).extracting(Reason::code).contains("decision.money-never-pays");
  }
}
