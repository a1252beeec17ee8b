package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/**
 * Gas and alcohol take the place of what would give the same service: light for light, electricity
 * for electricity, heat in the pot for heat in the pot.
 */
class ServiceForServiceTest {

  private static final double ELECTRICITY_PRICE = 0.3;
  private static final double SAME_PERCENT = 1e-6;

  private static JsonNode answer(String use, double hours, boolean electricityPriced)
      throws IOException {
    ObjectNode plan =
        (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-canteen-scraps"));
    ObjectNode gas = (ObjectNode) plan.path("gas");
    gas.putArray("uses").addObject().put("use", use).put("hoursPerDay", hours);
    if (electricityPriced) {
      ((ObjectNode) plan.path("money")).put("electricityPricePerKWh", ELECTRICITY_PRICE);
    }
    return answer(plan);
  }

  private static JsonNode answer(ObjectNode plan) throws IOException {
    return SamplePlans.written(plan.toString());
  }

  private static JsonNode gasVerdict(JsonNode answer) {
    return verdict(answer, "gas-capture");
  }

  private static JsonNode verdict(JsonNode answer, String component) {
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      if (verdict.path("component").asText().equals(component)) {
        return verdict;
      }
    }
    throw new AssertionError("no verdict on " + component);
  }

  private static double gasUsedKWh(JsonNode answer) {
    return answer.at("/estimate/digester/annual/gasUsedKWh").asDouble();
  }

  /**
   * Small engine sets give about a sixth to a quarter of the gas as electricity: 1 kWh for each
   * cubic metre of gas of 5.97 kWh by the planning figures of the GTZ (read), 18 to 25 percent by
   * common practice.
   */
  @Test
  void anEngineSparesTheElectricityThatItsGeneratorGives() throws IOException {
    JsonNode answer = answer("engine", 3, true);
    JsonNode difference = gasVerdict(answer).path("difference");
    double work = difference.path("usefulEnergyKWh").asDouble();
    double spared = difference.path("displacedElectricityKWh").asDouble();
    assertThat(work).isPositive();
    assertThat(spared).isBetween(0.75 * work, work);
    assertThat(spared / gasUsedKWh(answer)).isCloseTo(1 / 5.97, within(0.01));
    assertThat(difference.path("displacedFuelKWh").asDouble()).isZero();
  }

  /**
   * A mantle lamp of 0.135 m3/h (0.76 kW) shines like a bulb of 25 to 75 W, 230 to 940 lm (text of
   * the GTZ, read; lumens from memory). Lamps of light-emitting diodes take 2 to 12 W for that.
   */
  @Test
  void aLampSparesWhatAnElectricLampOfTheSameLightTakes() throws IOException {
    JsonNode answer = answer("lamp", 12, true);
    JsonNode difference = gasVerdict(answer).path("difference");
    double share = difference.path("displacedElectricityKWh").asDouble() / gasUsedKWh(answer);
    assertThat(share).isBetween(0.002 / 0.76, 0.012 / 0.76);
    assertThat(difference.path("displacedFuelKWh").asDouble()).isZero();
    assertThat(difference.path("usefulEnergyKWh").asDouble())
        .as("no lamp gives more light energy than the electricity for it")
        .isPositive()
        .isLessThan(difference.path("displacedElectricityKWh").asDouble());
  }

  @Test
  void moneyAndGasesOfAnEngineAreThoseOfElectricity() throws IOException {
    JsonNode answer = answer("engine", 3, true);
    double spared =
        gasVerdict(answer).path("difference").path("displacedElectricityKWh").asDouble();
    assertThat(gasVerdict(answer).at("/difference/money/yearlyEnergySaving").asDouble())
        .isCloseTo(ELECTRICITY_PRICE * spared, withinPercentage(SAME_PERCENT));
    assertThat(answer.at("/estimate/money/appraisal/yearlyEnergySaving").asDouble())
        .isCloseTo(ELECTRICITY_PRICE * spared, withinPercentage(SAME_PERCENT));
    double carbonDioxide = 0;
    for (JsonNode line : answer.at("/estimate/greenhouseGas/lines")) {
      assertThat(line.path("code").asText()).isNotEqualTo("decision.gases-displaced-fuel");
      if (line.path("code").asText().equals("decision.gases-displaced-electricity")) {
        carbonDioxide += line.path("carbonDioxideKg").asDouble();
      }
    }
    assertThat(carbonDioxide)
        .as("0.367 kg for each kWh, mean of the United States grid in 2023 (EIA, read)")
        .isCloseTo(0.367 * spared, withinPercentage(SAME_PERCENT));
  }

  @Test
  void withoutAPriceOfElectricityTheGasIsJudgedByEnergyAndANoticeSaysSo() throws IOException {
    JsonNode answer = answer("engine", 3, false);
    assertThat(gasVerdict(answer).path("basis").asText()).isEqualTo("energy");
    assertThat(answer.path("notices").findValuesAsText("code"))
        .contains("decision.no-electricity-price");
  }

  @Test
  void electricityHasThePriceOfTheDisplacedFuelWhereItIsElectricity() throws IOException {
    ObjectNode plan =
        (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-canteen-scraps"));
    ((ObjectNode) plan.path("gas"))
        .putArray("uses")
        .addObject()
        .put("use", "engine")
        .put("hoursPerDay", 3);
    ((ObjectNode) plan.path("money")).put("displacedFuel", "electricity").put("fuelPricePerKWh", 1);
    JsonNode difference = gasVerdict(answer(plan)).path("difference");
    assertThat(difference.at("/money/yearlyEnergySaving").asDouble())
        .isCloseTo(
            difference.path("displacedElectricityKWh").asDouble(), withinPercentage(SAME_PERCENT));
  }

  /**
   * Alcohol in a stove of 0.5 spares half a kWh in the pot, 2/3 kWh of an electric plate's 0.75.
   */
  @Test
  void alcoholSparesTheFuelThatBringsTheSameHeatIntoAPot() throws IOException {
    ObjectNode plan =
        (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-garden-school"));
    ((ObjectNode) plan.path("money"))
        .put("displacedFuel", "electricity")
        .put("fuelPricePerKWh", ELECTRICITY_PRICE);
    JsonNode answer = answer(plan);
    double fuel = answer.at("/estimate/ethanol/annual/fuelEnergyKWh").asDouble();
    assertThat(fuel).isPositive();
    assertThat(
            verdict(answer, "fuel-alcohol").at("/difference/money/yearlyEnergySaving").asDouble())
        .isCloseTo(ELECTRICITY_PRICE * fuel * 0.5 / 0.75, withinPercentage(SAME_PERCENT));
  }
}
