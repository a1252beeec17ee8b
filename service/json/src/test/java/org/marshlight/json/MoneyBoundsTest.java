package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;

/** Rates and lives are limited to what a plant can see, so that money stays readable. */
class MoneyBoundsTest {

  /** More digits than the money of a state has. */
  private static final int MOST_DIGITS = 12;

  private static ObjectNode canteen() throws IOException {
    return (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-canteen-scraps"));
  }

  private static JsonNode answer(ObjectNode plan) throws IOException {
    return SamplePlans.written(plan.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "discountRate, -0.06, inflation",
    "discountRate, -0.99, inflation",
    "discountRate, 5, 0.05 for 5 percent",
    "fuelPriceGrowth, 0.2, a tenth a year",
    "fuelPriceGrowth, -0.2, a tenth a year",
    "lifeYears, 61, no part of such a plant"
  })
  void whatNoPlantCanSeeIsRefusedWithTheReason(String field, double value, String reason)
      throws IOException {
    ObjectNode plan = canteen();
    ((ObjectNode) plan.path("money")).put(field, value);
    assertThatThrownBy(() -> answer(plan))
        .isInstanceOfSatisfying(
            Faults.class,
            faults -> {
              assertThat(faults.list()).hasSize(1);
              Fault fault = faults.list().get(0);
              assertThat(fault.pointer()).isEqualTo("/money/" + field);
              assertThat(fault.detail()).contains(field, reason);
              assertThat(fault.allowed()).contains(" to ");
            });
  }

  @Test
  void atTheEndsOfTheBoundsEveryNumberIsShort() throws IOException {
    ObjectNode plan = canteen();
    ((ObjectNode) plan.path("money"))
        .put("discountRate", -0.05)
        .put("fuelPriceGrowth", 0.1)
        .put("lifeYears", 60);
    JsonNode answer = answer(plan);
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      for (JsonNode reason : verdict.path("reasons")) {
        assertThat(reason.path("text").asText())
            .doesNotContainPattern("[0-9]{" + MOST_DIGITS + "}");
      }
    }
    assertThat(Math.abs(answer.at("/estimate/money/appraisal/netPresentValue").asDouble()))
        .isLessThan(1e9);
  }
}
