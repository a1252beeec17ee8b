package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.marshlight.Meta;

/** What operators see. */
@QuarkusTest
class HealthTest {

  @Test
  void readinessTellsWhichVersionAnswers() {
    JsonNode health = Service.json(Service.asking().get("/q/health/ready"));
    assertThat(health.path("status").asText()).isEqualTo("UP");
    JsonNode data = health.path("checks").get(0).path("data");
    for (JsonNode check : health.path("checks")) {
      data = check.path("name").asText().equals("marshlight") ? check.path("data") : data;
    }
    assertThat(data.path("version").asText()).isEqualTo(Meta.VERSION);
    assertThat(data.path("formulas").asInt()).isPositive();
    assertThat(health.toString()).doesNotContainIgnoringCase("java").doesNotContain("host");
  }

  @Test
  void metricsCountRequestsByRouteAndNotByWhatTheyAskFor() {
    Service.asking().get("/v1/feeds/whey");
    Service.asking().get("/v1/feeds/whey-0");
    Service.asking().put("/v1/feeds/whey-1");
    Service.asking().header("Accept", "image/png").get("/v1/formulas/whey-2");
    Service.post("/whey-3", new byte[2_000_000], "text/plain");
    String metrics = Service.asking().get("/q/metrics").asString();
    assertThat(metrics)
        .contains("uri=\"/v1/{catalogue}/{id}\"", "uri=\"/v1/feeds/{id}\"", "uri=\"OTHER\"")
        .doesNotContain("whey");
  }
}
