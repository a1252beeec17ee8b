package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Verdicts and their sentences do not contradict each other. */
class VerdictsAgreeTest {

  private static final double SAME_PERCENT = 1e-6;

  static Stream<String> samples() {
    return SamplePlans.names().stream();
  }

  private static ObjectNode canteen() throws IOException {
    return (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-canteen-scraps"));
  }

  private static JsonNode answer(ObjectNode plan) throws IOException {
    return SamplePlans.written(plan.toString());
  }

  private static JsonNode verdict(JsonNode answer, String component) {
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      if (verdict.path("component").asText().equals(component)) {
        return verdict;
      }
    }
    throw new AssertionError("no verdict on " + component);
  }

  private static List<String> codes(JsonNode verdict) {
    return verdict.path("reasons").findValuesAsText("code");
  }

  @Test
  void whatIsWorthNoMoneyIsNoYes() throws IOException {
    ObjectNode plan = canteen();
    ObjectNode money = (ObjectNode) plan.path("money");
    money.put("fuelPricePerKWh", 0).remove("yearlyCare");
    money.putArray("owned").add("tank").add("gas");
    JsonNode gas = verdict(answer(plan), "gas-capture");
    assertThat(gas.at("/difference/money/least").asDouble()).isZero();
    assertThat(gas.at("/difference/money/most").asDouble()).isZero();
    assertThat(gas.path("answer").asText()).isEqualTo("no");
    assertThat(codes(gas)).contains("decision.money-does-not-pay");
  }

  @Test
  void feedingIsNoYesWhereItsGasIsNotWorthCatching() throws IOException {
    ObjectNode plan = canteen();
    ((ObjectNode) plan.at("/money/capital")).put("gas", 100_000);
    JsonNode answer = answer(plan);
    assertThat(verdict(answer, "gas-capture").path("answer").asText()).isEqualTo("no");
    JsonNode feeding = verdict(answer, "co-feeding");
    assertThat(feeding.path("answer").asText()).isEqualTo("marginal");
    assertThat(feeding.path("heldBackBy").toString()).contains("decision.feeding-gas-not-worth");
  }

  /** Feeding that only spares a refuse fee pays, brings no gas and is therefore marginal. */
  @Test
  void feedingThatEarnsWithoutGasIsNotCalledNoWhileItPays() throws IOException {
    ObjectNode plan = canteen();
    ((ObjectNode) plan.path("gas")).putArray("uses");
    plan.putObject("baseline")
        .putArray("feeds")
        .addObject()
        .put("feed", "kitchen-scraps")
        .put("fate", "refuse")
        .put("yearlyCost", 300);
    JsonNode feeding = verdict(answer(plan), "co-feeding");
    assertThat(feeding.at("/difference/usefulEnergyKWh").asDouble()).isZero();
    assertThat(codes(feeding)).contains("decision.money-pays", "decision.earns-otherwise");
    assertThat(feeding.path("answer").asText()).isEqualTo("marginal");
  }

  /** Where money says the opposite of a verdict, a sentence says that money does not decide. */
  @ParameterizedTest
  @MethodSource("samples")
  void moneyThatSaysTheOppositeIsSaidNotToDecide(String sample) throws IOException {
    JsonNode answer =
        answer((ObjectNode) ContractJson.mapper().readTree(SamplePlans.request(sample)));
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      List<String> codes = codes(verdict);
      String worth = verdict.path("answer").asText();
      boolean opposite =
          worth.equals("no") && codes.contains("decision.money-pays")
              || worth.equals("yes") && codes.contains("decision.money-does-not-pay");
      assertThat(codes.contains("decision.not-for-the-money"))
          .as("%s %s", sample, verdict.path("component"))
          .isEqualTo(opposite);
    }
  }

  /** Beds behind a septic tank that exists already are judged against the soil without them. */
  @Test
  void bedsWithoutATankAreJudgedByTheGivenWater() throws IOException {
    JsonNode answer =
        answer(
            (ObjectNode)
                ContractJson.mapper().readTree(SamplePlans.request("loop-beds-behind-a-tank")));
    JsonNode beds = verdict(answer, "beds");
    JsonNode without = null;
    for (JsonNode reason : beds.path("reasons")) {
      if (reason.path("code").asText().equals("decision.beds-without")) {
        without = reason.path("params");
      }
    }
    assertThat(without).isNotNull();
    assertThat(without.path("withoutBodKg").asDouble())
        .as("0.5 m3 a day of 150 mg/L")
        .isCloseTo(0.5 * 365 * 0.150, withinPercentage(SAME_PERCENT));
    assertThat(beds.at("/measure/value").asDouble())
        .isCloseTo(
            1 - without.path("withBodKg").asDouble() / without.path("withoutBodKg").asDouble(),
            withinPercentage(SAME_PERCENT));
    assertThat(without.path("withoutNitrogenKg").asDouble())
        .isGreaterThan(without.path("withNitrogenKg").asDouble());
  }

  @Test
  void aPlanWithNothingToJudgeSaysSo() throws IOException {
    ObjectNode plan = canteen();
    plan.remove("feeds");
    plan.remove("gas");
    JsonNode answer = answer(plan);
    assertThat(answer.at("/estimate/verdicts")).isEmpty();
    assertThat(answer.path("notices").findValuesAsText("code")).contains("decision.nothing-judged");
  }
}
