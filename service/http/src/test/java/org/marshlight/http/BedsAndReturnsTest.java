package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a planner meets at the service of beds, still and heap: closed cycles, dry months, noes. */
@QuarkusTest
class BedsAndReturnsTest {

  private static final String DRY_SITE =
      """
      {"latitudeDeg":33,"elevationM":100,"climate":{"monthly":{
      "meanAirTemperatureC":[8,10,14,18,23,28,32,32,28,21,14,9],
      "horizontalSolarKWhM2Day":[3,3.8,5,6.2,7.2,8,7.8,7.2,6,4.6,3.4,2.8],
      "rainMm":[40,35,20,5,0,0,0,0,0,5,20,40]}}}""";

  @ParameterizedTest
  @ValueSource(strings = {"compost", "tank", "land"})
  void stillageGoesWhereThePlanSaysAndEveryBalanceCloses(String route) throws Exception {
    ObjectNode plan = (ObjectNode) Service.JSON.readTree(Service.contractPlan());
    plan.putObject("routes").put("stillage", route);
    JsonNode answer = Service.json(Service.post("/v1/estimates/loop", plan.toString()));
    int passes = answer.path("meta").path("passes").asInt();
    assertThat(passes > 1).as("passes %s", passes).isEqualTo(route.equals("tank"));
    for (JsonNode balance : answer.path("estimate").path("balances")) {
      assertThat(balance.path("relativeResidual").asDouble())
          .as(balance.toString())
          .isLessThan(1e-9);
    }
  }

  @Test
  void aBedInAHotDryMonthReportsNoDischargeAndWhatBecomesOfItsSalts() {
    JsonNode answer =
        Service.json(
            Service.post(
                "/v1/estimates/wetland",
                "{\"site\":"
                    + DRY_SITE
                    + ",\"given\":{\"effluent\":{\"flowM3Day\":0.25}},\"beds\":[{\"areaM2\":60}]}"));
    JsonNode monthly = answer.path("estimate").path("wetland").path("monthly");
    assertThat(monthly.path("outflowM3").get(6).asDouble()).isZero();
    assertThat(monthly.path("effluentBod5MgL").get(6).isNull()).isTrue();
    assertThat(monthly.path("effluentConductivityDSM").get(6).isNull()).isTrue();
    assertThat(codes(answer)).contains("wetland.no-outflow", "wetland.salts-stay");
  }

  @Test
  void aHarvestOfUnknownOriginIsTakenToBeOfHumanOriginToTheEnd() {
    String plan =
        """
        {"site":{"climate":{"id":"seattle-tacoma"}},
        "given":{"harvest":{"plant":"broadleaf-cattail","storageOrganDryKg":100}},
        "fuel":{},"compost":{"ingredients":[{"ingredient":"straw","freshKgPerYear":250}]}}""";
    JsonNode still = Service.json(Service.post("/v1/estimates/ethanol", plan));
    assertThat(codes(still)).contains("ethanol.human-origin", "loop.human-origin-assumed");
    JsonNode heap = Service.json(Service.post("/v1/estimates/compost", plan));
    JsonNode hygiene = heap.path("estimate").path("compost").path("hygiene");
    assertThat(hygiene.path("humanOrigin").asBoolean()).as(heap.toString()).isTrue();
    assertThat(hygiene.path("excludedFromFoodEatenRaw").asBoolean()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "/beds/0/depthM, 1.4",
    "/beds/0/areaM2, 0",
    "/beds/0/harvestedFraction, 1.2",
    "/beds/0/plant, broadleaf-catail"
  })
  void aBedThatCannotBeIsRefusedAtItsField(String pointer, String value) throws Exception {
    ObjectNode plan = (ObjectNode) Service.JSON.readTree(Service.contractPlan());
    ObjectNode bed = (ObjectNode) plan.path("beds").get(0);
    String name = pointer.substring(pointer.lastIndexOf('/') + 1);
    if (name.equals("plant")) {
      bed.put(name, value);
    } else {
      bed.put(name, Double.parseDouble(value));
    }
    bed.put("medium", "coarse-sand");
    JsonNode problem = Service.json(Service.post("/v1/estimates/loop", plan.toString()));
    assertThat(problem.path("status").asInt()).as(problem.toString()).isEqualTo(400);
    assertThat(problem.path("errors").findValuesAsText("pointer")).contains(pointer);
  }

  @Test
  void aStrengthThatPlatesAndRefluxCannotReachIsRefusedWithTheLeastThatCan() {
    JsonNode problem =
        Service.json(
            Service.post(
                "/v1/estimates/ethanol",
                """
                {"site":{"climate":{"id":"seattle-tacoma"}},
                "given":{"harvest":{"plant":"taro","storageOrganDryKg":100}},
                "fuel":{"still":{"kind":"column","theoreticalPlates":4,"refluxRatio":1.5,
                "targetStrengthPercentVol":92}}}"""));
    assertThat(problem.path("status").asInt()).isEqualTo(400);
    JsonNode error = problem.path("errors").get(0);
    assertThat(error.path("code").asText()).isEqualTo("ethanol.target-out-of-reach");
    assertThat(error.path("params").path("leastRefluxRatio").asDouble()).isGreaterThan(1.5);
    assertThat(error.path("params").path("leastPlates").asDouble()).isPositive();
  }

  @Test
  void compostOfOneWetIngredientIsAnsweredWithWhatWouldMendIt() {
    JsonNode answer =
        Service.json(
            Service.post(
                "/v1/estimates/compost",
                """
                {"site":{"climate":{"id":"seattle-tacoma"}},
                "compost":{"ingredients":[{"ingredient":"kitchen-scraps",
                "freshKgPerYear":300}]}}"""));
    JsonNode mending = answer.path("estimate").path("compost").path("mending");
    assertThat(mending.path("needed").asBoolean()).as(answer.toString()).isTrue();
    assertThat(mending.path("additions").size()).isPositive();
    assertThat(codes(answer)).contains("compost.mend");
  }

  private static List<String> codes(JsonNode answer) {
    List<String> codes = new ArrayList<>();
    answer.path("notices").forEach(notice -> codes.add(notice.path("code").asText()));
    return codes;
  }
}
