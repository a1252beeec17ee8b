package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fuel alcohol has one energy ratio, wherever the answer shows it. */
class OneEnergyRatioTest {

  private static final double SAME_PERCENT = 1e-6;

  /** An invented still for bought tubers and nothing else, judged by energy alone. */
  private static final String STILL =
      """
      {
        "site": {"climate": {"id": "gainesville"}},
        "given": {"harvest": {"plant": "broadleaf-arrowhead", "storageOrganDryKg": 300}},
        "fuel": {
          "route": "enzyme",
          "still": {
            "kind": "column",
            "theoreticalPlates": 15,
            "refluxRatio": 3.5,
            "feedHeatRecoveredFraction": 0.7
          }
        }
      }
      """;

  private static JsonNode estimate(String heat) throws IOException {
    ObjectNode plan = (ObjectNode) ContractJson.mapper().readTree(STILL);
    ((ObjectNode) plan.path("fuel")).put("heat", heat);
    return SamplePlans.written(plan.toString()).path("estimate");
  }

  @ParameterizedTest
  @ValueSource(strings = {"electricity", "solar-heat", "biogas", "firewood", "lpg", "wood-pellets"})
  void verdictStillAndEnergyReturnTellTheSameRatio(String heat) throws IOException {
    JsonNode estimate = estimate(heat);
    double ratio = estimate.at("/ethanol/heat/energyRatio").asDouble();
    assertThat(estimate.at("/verdicts/0/measure/value").asDouble())
        .isCloseTo(ratio, withinPercentage(SAME_PERCENT));
    assertThat(estimate.at("/energyReturn/operationRatio").asDouble())
        .isCloseTo(ratio, withinPercentage(SAME_PERCENT));
    assertThat(estimate.at("/verdicts/0/difference/alcoholNetKWh").asDouble())
        .isCloseTo(
            estimate.at("/ethanol/annual/fuelEnergyKWh").asDouble()
                - estimate.at("/energyReturn/operationKWh").asDouble(),
            withinPercentage(SAME_PERCENT));
  }

  @Test
  void electricityDoesNotMakeAlcoholWorthItAndSunshineDoes() throws IOException {
    assertThat(estimate("electricity").at("/verdicts/0/answer").asText()).isEqualTo("no");
    assertThat(estimate("solar-heat").at("/verdicts/0/answer").asText()).isEqualTo("yes");
  }
}
