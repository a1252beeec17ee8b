package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.marshlight.Marshlight;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Flow;
import org.marshlight.loop.Stage;

/** What holds human waste, or grew on it, is marked on its whole way. */
class HumanOriginTest {

  private static final Set<String> CLEAN =
      Set.of("air", "oxygen-uptake", "reaction", "gas-store", "burner", "flare", "fuel-tank");

  private static final String WHOLE =
      """
      {"site": {"climate": {"id": "burlington"}}, "people": {"count": %d},
       "feeds": [{"feed": "cattle-manure", "freshKgPerDay": 10}],
       "tank": {"liquidVolumeM3": 6}, "gas": {}, "beds": [{"areaM2": 30}],
       "fuel": {"mashedFraction": 0.5},
       "compost": {"ingredients": [{"ingredient": "straw", "freshKgPerYear": 50}]},
       "routes": {"sludge": "compost"}}""";

  private static final String HEAP =
      """
      {"site": {"climate": {"id": "burlington"}},
       "compost": {"ingredients": [{"ingredient": "%s", "freshKgPerYear": 500}]}}""";

  private static final String HARVEST =
      """
      {"site": {"climate": {"id": "burlington"}}, "fuel": {}, "compost": {},
       "given": {"harvest": {"plant": "taro", "storageOrganDryKg": 50%s}}}""";

  @Test
  void everyFlowBehindPeopleIsMarkedAndGasAndFuelAreNot() {
    List<Flow> flows = flows(WHOLE.formatted(4));
    List<Flow> marked = flows.stream().filter(Flow::humanOrigin).toList();
    assertThat(marked)
        .extracting(Flow::from)
        .contains("people", "tank", "bed-1", "still", "heap")
        .doesNotContain("feeds", "rain", "photosynthesis", "purchases", "gas-store");
    assertThat(marked).extracting(Flow::to).doesNotContainAnyElementsOf(CLEAN).contains("land");
    assertThat(flows)
        .filteredOn(flow -> Set.of("tank", "bed-1", "still", "heap").contains(flow.from()))
        .filteredOn(flow -> !CLEAN.contains(flow.to()))
        .allMatch(Flow::humanOrigin);
  }

  @Test
  void aTankWithoutPeopleGivesNothingOfHumanOrigin() {
    assertThat(flows(WHOLE.formatted(0))).noneMatch(Flow::humanOrigin);
  }

  @Test
  void whatIsBoughtIsMarkedByWhatItIs() {
    assertThat(flows(HEAP.formatted("septic-sludge")))
        .filteredOn(flow -> flow.from().equals("purchases") || flow.to().equals("land"))
        .isNotEmpty()
        .allMatch(Flow::humanOrigin);
    assertThat(flows(HEAP.formatted("straw"))).noneMatch(Flow::humanOrigin);
  }

  @Test
  void aGivenHarvestIsHeldToHaveGrownOnHumanWasteUnlessThePlanSaysNot() {
    assertThat(flows(HARVEST.formatted("")))
        .filteredOn(flow -> flow.from().equals("still") && flow.to().equals("heap"))
        .isNotEmpty()
        .allMatch(Flow::humanOrigin);
    assertThat(flows(HARVEST.formatted(", \"humanOrigin\": false")))
        .isNotEmpty()
        .noneMatch(Flow::humanOrigin);
  }

  private static List<Flow> flows(String request) {
    PlanDocument document = PlanDocument.read(request.getBytes(StandardCharsets.UTF_8));
    PlanEstimate estimate =
        Marshlight.estimate(
                new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()))
            .estimate();
    return estimate.flows();
  }
}
