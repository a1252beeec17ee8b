package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Beds are judged by all the water that enters them, whether or not it passed the tank. */
class BedsAndGreywaterTest {

  private static final String SAMPLE = "loop-toilet-only-beds";

  private static ObjectNode plan() throws IOException {
    return (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request(SAMPLE));
  }

  private static JsonNode estimate(ObjectNode plan) throws IOException {
    return SamplePlans.written(plan.toString()).path("estimate");
  }

  private static JsonNode beds(JsonNode estimate) {
    for (JsonNode verdict : estimate.path("verdicts")) {
      if (verdict.path("component").asText().equals("beds")) {
        return verdict;
      }
    }
    throw new AssertionError("no verdict on beds");
  }

  private static double removedPercent(JsonNode estimate) {
    return beds(estimate).at("/reasons").findParents("params").stream()
        .filter(reason -> reason.path("code").asText().equals("decision.beds-remove"))
        .findFirst()
        .orElseThrow()
        .at("/params/bodPercent")
        .asDouble();
  }

  /** Nitrogen flows are booked apart from verdicts: they are the independent account. */
  private static double nitrogenRemovedPercent(JsonNode estimate) {
    double in = 0;
    double out = 0;
    for (JsonNode flow : estimate.path("flows")) {
      if (flow.path("quantity").asText().equals("nitrogen")) {
        in += flow.path("to").asText().equals("bed-1") ? flow.path("perYear").asDouble() : 0;
        out +=
            flow.path("from").asText().equals("bed-1") && flow.path("to").asText().equals("soil")
                ? flow.path("perYear").asDouble()
                : 0;
      }
    }
    return 100 * (1 - out / in);
  }

  @Test
  void greywaterCountsAmongWhatTheBedsRemove() throws IOException {
    JsonNode estimate = estimate(plan());
    assertThat(removedPercent(estimate)).isBetween(50.0, 100.0);
    JsonNode reason =
        beds(estimate).at("/reasons").findParents("params").stream()
            .filter(r -> r.path("code").asText().equals("decision.beds-remove"))
            .findFirst()
            .orElseThrow();
    assertThat(reason.at("/params/nitrogenPercent").asDouble())
        .isCloseTo(nitrogenRemovedPercent(estimate), within(1e-6));
  }

  /** Greywater that soaks away loads the soil as much without beds as water of the tank does. */
  @Test
  void withoutBedsTheGreywaterIsStillThere() throws IOException {
    ObjectNode soaked = plan();
    soaked.withObject("/routes").put("greywater", "soil-absorption");
    JsonNode throughBeds = beds(estimate(plan())).path("difference");
    JsonNode pastBeds = beds(estimate(soaked)).path("difference");
    assertThat(throughBeds.path("outflowBod5Kg").asDouble())
        .as("beds take more where more comes to them")
        .isLessThan(pastBeds.path("outflowBod5Kg").asDouble());
    assertThat(pastBeds.path("outflowBod5Kg").asDouble()).isNegative();
  }

  /** Water that a valve leads past the beds is not removed by them. */
  @Test
  void whatIsLedPastTheBedsIsNotRemovedByThem() throws IOException {
    ObjectNode led = plan();
    led.withObject("/diversion").putArray("months").add(1).add(2).add(12);
    assertThat(removedPercent(estimate(led))).isBetween(50.0, 100.0);
    assertThat(Math.abs(removedPercent(estimate(led)) - removedPercent(estimate(plan()))))
        .isLessThan(10);
  }
}
