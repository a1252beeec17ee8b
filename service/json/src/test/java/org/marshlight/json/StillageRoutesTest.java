package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Balance;
import org.marshlight.loop.Flow;
import org.marshlight.loop.Stage;

/** Stillage goes to the tank, the heap or the land, as the plan says, and takes its minerals. */
class StillageRoutesTest {

  private static final List<String> ELEMENTS =
      List.of("carbon", "nitrogen", "phosphorus", "potassium");

  private static final String PLAN =
      """
      {"site": {"climate": {"id": "gainesville"}}, "people": {"count": 4},
       "tank": {"liquidVolumeM3": 6}, "gas": {}, "beds": [{"areaM2": 40, "plant": "taro"}],
       "fuel": {"still": {"kind": "column"}},
       "compost": {"ingredients": [{"ingredient": "straw", "freshKgPerYear": 100}]},
       "routes": {"stillage": "%s", "tops": "%s"}}""";

  @ParameterizedTest
  @CsvSource({"tank, tank", "compost, heap", "land, land"})
  void stillageGoesWhereThePlanSendsIt(String route, String party) {
    PlanEstimate estimate = answer(route, "compost").estimate();
    double minerals = estimate.ethanol().stillage().potassiumKg();
    assertThat(minerals).isPositive();
    assertThat(sum(estimate, "potassium", "still", null))
        .isCloseTo(minerals, within(1e-9 * minerals));
    assertThat(sum(estimate, "potassium", "still", party))
        .isCloseTo(minerals, within(1e-9 * minerals));
  }

  @Test
  void stillageSentToTheTankClosesACycleThatSettles() {
    Answer<PlanEstimate> cycle = answer("tank", "compost");
    Answer<PlanEstimate> straight = answer("compost", "compost");
    assertThat(cycle.meta().passes()).isGreaterThan(2).isLessThanOrEqualTo(200);
    assertThat(straight.meta().passes()).isLessThan(cycle.meta().passes());
    assertThat(cycle.estimate().digester().annual().methaneProducedNm3())
        .isGreaterThan(straight.estimate().digester().annual().methaneProducedNm3());
    assertClosed(cycle.estimate());
  }

  /** What mash and heap receive is what still and heap give, element by element. */
  @Test
  void nitrogenPhosphorusPotassiumAndCarbonCloseThroughMashStillStillageAndHeap() {
    PlanEstimate estimate = answer("compost", "compost").estimate();
    for (String element : ELEMENTS) {
      for (String process : List.of("still", "heap")) {
        double in = sum(estimate, element, null, process);
        double out = sum(estimate, element, process, null);
        assertThat(in).as("%s into %s", element, process).isPositive();
        assertThat(out).as("%s of %s", element, process).isCloseTo(in, within(1e-9 * in));
      }
    }
    assertThat(sum(estimate, "phosphorus", "still", "heap"))
        .isCloseTo(sum(estimate, "phosphorus", null, "still"), within(1e-9));
    assertThat(sum(estimate, "nitrogen", "still", "fuel-tank")).isZero();
    assertClosed(estimate);
  }

  private static void assertClosed(PlanEstimate estimate) {
    for (Balance balance : estimate.balances()) {
      assertThat(balance.relativeResidual()).as(balance.quantity()).isLessThanOrEqualTo(1e-9);
    }
  }

  /** Flows of a quantity between two parties; null stands for any. */
  private static double sum(PlanEstimate estimate, String quantity, String from, String to) {
    return estimate.flows().stream()
        .filter(flow -> flow.quantity().equals(quantity))
        .filter(flow -> from == null || flow.from().equals(from))
        .filter(flow -> to == null || flow.to().equals(to))
        .mapToDouble(Flow::perYear)
        .sum();
  }

  private static Answer<PlanEstimate> answer(String stillage, String tops) {
    PlanDocument document =
        PlanDocument.read(PLAN.formatted(stillage, tops).getBytes(StandardCharsets.UTF_8));
    return Marshlight.estimate(
        new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
  }
}
