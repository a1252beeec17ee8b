package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.marshlight.http.contract.Sample;

/** Sends weather files as clients do. */
@QuarkusTest
class WeatherRoutesTest {

  private static final String PATH = "/v1/climates/from-weather-file";

  private static final String MEAN = "/estimate/digester/annual/meanLiquorTemperatureC";

  private static final String FILE =
      Sample.all().stream()
          .filter(sample -> sample.name().equals("weather-file-invented"))
          .findFirst()
          .orElseThrow()
          .body();

  @Test
  void theAnswerGoesIntoAPlanUnchangedAndItsHoursDriveTheTank() {
    JsonNode answer = Service.json(send(PATH, FILE));
    ObjectNode plan = Service.JSON.createObjectNode();
    plan.put("name", "Invented demo: weather of a file");
    ObjectNode site = plan.putObject("site");
    site.set("climate", answer.path("climate"));
    for (String name : new String[] {"latitudeDeg", "longitudeDeg", "elevationM"}) {
      site.set(name, answer.at("/place/" + name));
    }
    plan.putObject("people").put("count", 4);
    plan.putObject("tank");
    plan.putObject("cover").put("kind", "glazed");
    JsonNode byNormals = Service.json(Service.post("/v1/estimates/digester", plan.toString()));
    site.set("hours", answer.path("hours"));
    JsonNode byHours = Service.json(Service.post("/v1/estimates/digester", plan.toString()));

    double normals = byNormals.at(MEAN).asDouble();
    double hours = byHours.at(MEAN).asDouble();
    assertThat(byHours.at(MEAN).isNumber()).as(byHours.toString()).isTrue();
    assertThat(Math.abs(hours - normals)).isBetween(1e-6, 5.0);
    JsonNode notice = notice(byHours, "climate.hours-drive");
    assertThat(Math.abs(notice.at("/params/meanK").asDouble() - (hours - normals)))
        .isLessThan(1e-9);
    assertThat(notice(byNormals, "climate.hours-drive").isMissingNode()).isTrue();
  }

  @Test
  void whatWasRepairedIsTold() {
    JsonNode answer = Service.json(send(PATH + "?hours=false", FILE));
    assertThat(answer.path("hours").isNull()).isTrue();
    assertThat(notice(answer, "climate.weather-file-bridged").isMissingNode()).isFalse();
    assertThat(answer.path("cautions")).isNotEmpty();
  }

  @Test
  void aFileCutOffIsRefusedWithItsLine() {
    JsonNode problem =
        Service.refused(send(PATH, FILE.substring(0, FILE.length() / 2)), 400, "wrong-fields");
    assertThat(problem.at("/errors/0/params/line").asInt()).isGreaterThan(4000);
  }

  @Test
  void otherTypesMethodsSizesAndFlagsAreRefused() {
    Service.refused(Service.post(PATH, FILE), 415, "unsupported-media-type");
    Service.refused(Service.asking().get(PATH), 405, "method-not-allowed");
    Service.refused(send(PATH, " ".repeat(4 * 1024 * 1024 + 1)), 413, "too-large");
    Service.refused(send(PATH + "?hours=some", FILE), 400, "bad-request");
    Service.refused(send(PATH, ""), 400, "wrong-fields");
  }

  private static Response send(String path, String file) {
    return Service.post(path, file.getBytes(StandardCharsets.ISO_8859_1), "text/plain");
  }

  private static JsonNode notice(JsonNode answer, String code) {
    for (JsonNode notice : answer.path("notices")) {
      if (notice.path("code").asText().equals(code)) {
        return notice;
      }
    }
    return Service.JSON.missingNode();
  }
}
