package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.json.CanonicalHash;

/** What the routes of estimates answer, and in which form. */
@QuarkusTest
class EstimateRoutesTest {

  @ParameterizedTest
  @ValueSource(strings = {"digester", "wetland", "crop", "ethanol", "compost"})
  void aStageAnswersUnderItsOwnNameOnly(String stage) {
    Response response = Service.post("/v1/estimates/" + stage, Service.contractPlan());
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    JsonNode answer = Service.json(response);
    assertThat(names(answer))
        .containsExactly("estimate", "cautions", "assumptions", "notices", "meta");
    assertThat(names(answer.path("estimate"))).containsExactly(stage);
  }

  @Test
  void theLoopAnswersEveryStageWithBalancesFlowsAndVerdicts() {
    JsonNode answer = Service.json(Service.post("/v1/estimates/loop", Service.contractPlan()));
    assertThat(names(answer.path("estimate")))
        .containsExactly(
            "digester",
            "wetland",
            "crop",
            "ethanol",
            "compost",
            "balances",
            "flows",
            "closure",
            "verdicts",
            "money",
            "greenhouseGas",
            "energyReturn",
            "alternatives",
            "materials",
            "labour",
            "calendar");
    assertThat(answer.path("meta").path("version").asText()).isNotBlank();
    assertThat(answer.path("meta").path("planSha256").asText())
        .isEqualTo(CanonicalHash.sha256(Service.contractPlan()));
  }

  @Test
  void theWorkingIsShownWhereAskedForAndEachStepCanBeWorkedAgain() {
    JsonNode working =
        Service.json(Service.post("/v1/estimates/loop?working=true", Service.contractPlan()))
            .path("estimate")
            .path("working");
    List<JsonNode> steps =
        working.findValues("steps").stream().flatMap(EstimateRoutesTest::each).toList();
    assertThat(steps).isNotEmpty();
    for (JsonNode step : steps) {
      Response again =
          Service.post(
              "/v1/formulas/" + step.path("formula").asText(),
              "{\"inputs\":" + step.path("inputs") + "}");
      assertThat(Service.json(again).path("value"))
          .as(step.toString())
          .isEqualTo(step.path("value"));
    }
  }

  @Test
  void theSamePlanGivesTheSameBytesHoweverItIsLaidOut() {
    byte[] first = Service.post("/v1/estimates/loop", Service.contractPlan()).asByteArray();
    String packed = Service.contractPlan().replace("\n", "").replace("  ", "");
    assertThat(Service.post("/v1/estimates/loop", packed).asByteArray()).isEqualTo(first);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "*/* | application/json",
        "application/json | application/json",
        "text/csv | text/csv; charset=utf-8; header=present",
        "text/html | text/html; charset=utf-8",
        "text/html;q=0.4, text/csv;q=0.5 | text/csv; charset=utf-8; header=present",
      })
  void theFormFollowsWhatTheClientAccepts(String accept, String type) {
    Response response =
        Service.asking()
            .contentType("application/json")
            .header("Accept", accept)
            .body(Service.contractPlan().getBytes(StandardCharsets.UTF_8))
            .post("/v1/estimates/digester");
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.contentType().replace(";charset=UTF-8", "")).isEqualTo(type);
    assertThat(response.header("Vary"))
        .isEqualTo(
            type.startsWith("text/html")
                ? "Accept, Accept-Language, Accept-Encoding"
                : "Accept, Accept-Encoding");
    assertThat(response.header("Cache-Control")).isEqualTo("no-store");
    Service.cautioned(response);
  }

  @Test
  void aFormThatCannotBeGivenIsRefused() {
    Response response =
        Service.asking()
            .contentType("application/json")
            .header("Accept", "application/xml")
            .body(Service.contractPlan().getBytes(StandardCharsets.UTF_8))
            .post("/v1/estimates/loop");
    Service.refused(response, 406, "not-acceptable");
  }

  private static java.util.stream.Stream<JsonNode> each(JsonNode list) {
    List<JsonNode> elements = new ArrayList<>();
    list.forEach(elements::add);
    return elements.stream();
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
