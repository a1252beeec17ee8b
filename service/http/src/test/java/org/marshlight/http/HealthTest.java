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
    assertThat(data.path("version").asText()).isEqualTo(Meta.VERSION);
    assertThat(data.path("formulas").asInt()).isPositive();
    assertThat(health.toString()).doesNotContainIgnoringCase("java").doesNotContain("host");
  }

  @Test
  void metricsCountRequestsByRouteAndNotByWhatTheyAskFor() {
    Service.asking().get("/v1/feeds/whey");
    String metrics = Service.asking().get("/q/metrics").asString();
    assertThat(metrics).contains("http_server_requests_seconds_count").doesNotContain("whey");
  }
}
