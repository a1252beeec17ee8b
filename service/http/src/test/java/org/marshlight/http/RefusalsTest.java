package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each thing that can be wrong with a request has its own clear answer. */
@QuarkusTest
class RefusalsTest {

  private static final String LOOP = "/v1/estimates/loop";
  private static final int OVER_THE_LIMIT = 1024 * 1024 + 1;

  @ParameterizedTest(name = "{1}: {0}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\0',
      value = {
        "{\"site\": ; malformed-json ; json.malformed ; ''",
        "{} trailing ; malformed-json ; json.trailing-text ; ''",
        "{\"a\": 1, \"a\": 1} ; wrong-fields ; json.repeated-name ; /a",
        "{\"tank\": {\"liquidVolumeM3\": NaN}} ; wrong-fields ; json.not-finite ; /tank/liquidVolumeM3",
        "{\"tank\": {\"liquidVolumeM3\": 1e400}} ; wrong-fields ; json.not-finite ; /tank/liquidVolumeM3",
        "{\"tank\": {\"liquidVolumeM3\": \"6\"}} ; wrong-fields ; json.wrong-type ; /tank/liquidVolumeM3",
        "{\"tank\": {\"compartments\": 2.5}} ; wrong-fields ; json.not-whole ; /tank/compartments",
        "{\"tnak\": {}} ; wrong-fields ; json.unknown-name ; /tnak",
        "{\"tank\": {\"shape\": \"cubic\"}} ; wrong-fields ; json.unknown-choice ; /tank/shape",
        "{} ; wrong-fields ; loop.missing ; /site",
        "{\"site\": {\"climate\": {\"id\": \"nowhere\"}}} ; wrong-fields ; loop.not-in-catalogue ; /site/climate/id",
      })
  void wrongBodies(String body, String problem, String code, String pointer) {
    JsonNode told = Service.refused(Service.post(LOOP, body), 400, problem);
    JsonNode error = told.path("errors").get(0);
    assertThat(error.path("code").asText()).isEqualTo(code);
    assertThat(error.path("pointer").asText()).isEqualTo(pointer.replace("''", ""));
    assertThat(error.path("detail").asText()).isNotBlank();
  }

  @Test
  void everyWrongFieldIsToldAtOnceWithWhatIsAllowed() {
    JsonNode errors =
        Service.refused(
                Service.post(
                    LOOP,
                    """
                    {"site": {"climate": {"id": "burlington"}, "latitudeDeg": 91},
                     "tank": {"liquidVolumeM3": -1, "compartments": 7}}"""),
                400,
                "wrong-fields")
            .path("errors");
    assertThat(errors.findValuesAsText("pointer"))
        .containsExactly("/site/latitudeDeg", "/tank/compartments", "/tank/liquidVolumeM3");
    assertThat(errors.findValuesAsText("rejected")).containsExactly("91.0", "7", "-1.0");
    assertThat(errors.get(0).path("allowed").asText()).isEqualTo("-90 to 90 deg");
    assertThat(errors.get(0).path("params").path("high").asDouble()).isEqualTo(90);
  }

  @Test
  void anEmptyBodyAndOneThatIsNoTextAreTold() {
    assertThat(errorOf(Service.post(LOOP, ""), "malformed-json")).isEqualTo("json.empty");
    assertThat(
            errorOf(
                Service.post(LOOP, new byte[] {'"', (byte) 0xff, '"'}, "application/json"),
                "malformed-json"))
        .isEqualTo("json.not-utf-8");
  }

  @Test
  void aHundredThousandWrongNamesMakeABoundedAnswer() {
    StringBuilder body = new StringBuilder("{\"n\": 0");
    for (int i = 0; i < 60_000; i++) {
      body.append(",\"n").append(i).append("\":0");
    }
    JsonNode problem =
        Service.refused(Service.post(LOOP, body.append('}').toString()), 400, "wrong-fields");
    assertThat(problem.path("errors")).hasSize(500);
  }

  @ParameterizedTest
  @CsvSource({"text/plain", "text/csv", "application/jsonp", "nonsense"})
  void otherContentTypes(String type) {
    Response response = Service.post(LOOP, "{}".getBytes(StandardCharsets.UTF_8), type);
    Service.refused(response, 415, "unsupported-media-type");
  }

  @Test
  void aBodyWithoutContentType() throws IOException {
    String answer =
        RawRequest.send(
            "POST "
                + LOOP
                + " HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Length: 2\r\n\r\n{}");
    assertThat(answer).startsWith("HTTP/1.1 415").contains("unsupported-media-type");
  }

  @Test
  void contentTypeParametersAreNoMatter() {
    byte[] body = "{}".getBytes(StandardCharsets.UTF_8);
    Service.refused(
        Service.post(LOOP, body, "Application/JSON; charset=utf-8"), 400, "wrong-fields");
  }

  @Test
  void aBodyThatIsTooLarge() {
    Service.refused(
        Service.post(LOOP, new byte[OVER_THE_LIMIT], "application/json"), 413, "too-large");
    Service.refused(
        Service.post(
            "/v1/formulas/climate.declination", new byte[OVER_THE_LIMIT], "application/json"),
        413,
        "too-large");
  }

  @Test
  void aBodyThatIsAnnouncedTooLargeIsNotWaitedFor() throws IOException {
    String head =
        RawRequest.head(
            "POST "
                + LOOP
                + " HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
                + "Content-Length: 99999999\r\nExpect: 100-continue\r\n\r\n");
    assertThat(head).startsWith("HTTP/1.1 413").contains("Cautions: ").contains("problem+json");
  }

  @Test
  void aChunkedBodyThatIsTooLarge() throws IOException {
    StringBuilder request =
        new StringBuilder(
            "POST "
                + LOOP
                + " HTTP/1.1\r\nHost: a\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + "Transfer-Encoding: chunked\r\n\r\n");
    String chunk = "8000\r\n" + " ".repeat(0x8000) + "\r\n";
    request.append(chunk.repeat(40)).append("0\r\n\r\n");
    assertThat(RawRequest.send(request.toString()))
        .startsWith("HTTP/1.1 413")
        .contains("too-large")
        .contains("Cautions: ");
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /nope",
    "GET, /v1",
    "POST, /v1/estimates/house",
    "GET, /v2/feeds",
    "GET, /q/nope",
    "DELETE, /nope",
  })
  void unknownPaths(String method, String path) {
    Service.refused(Service.asking().request(method, path), 404, "not-found");
  }

  @ParameterizedTest
  @CsvSource({
    "GET, /v1/estimates/loop, 'POST, OPTIONS'",
    "PUT, /v1/estimates/crop, 'POST, OPTIONS'",
    "DELETE, /v1/formulas/climate.declination, 'GET, HEAD, POST, OPTIONS'",
    "POST, /v1/feeds, 'GET, HEAD, OPTIONS'",
    "PATCH, /v1/feeds/whey, 'GET, HEAD, OPTIONS'",
    "POST, /, 'GET, HEAD, OPTIONS'",
    "GET, /report, 'POST, OPTIONS'",
    "TRACE, /, 'GET, HEAD, OPTIONS'",
  })
  void otherMethodsAreToldWhatIsAllowed(String method, String path, String allow) {
    Response response = Service.asking().request(method, path);
    Service.refused(response, 405, "method-not-allowed");
    assertThat(response.header("Allow")).isEqualTo(allow);
    Response options = Service.asking().options(path);
    assertThat(options.statusCode()).isEqualTo(204);
    assertThat(options.header("Allow")).isEqualTo(allow);
    Service.cautioned(options);
  }

  @Test
  void anotherQueryParameterValueThanTrueOrFalse() {
    JsonNode problem =
        Service.refused(Service.post(LOOP + "?working=yes", "{}"), 400, "bad-request");
    assertThat(problem.path("errors").get(0).path("rejected").asText()).isEqualTo("yes");
  }

  @ParameterizedTest
  @CsvSource({
    "POST, /v1/estimates/loop, 'units, working'",
    "POST, /v1/studies/sizing, costOnly",
    "POST, /v1/climates/from-weather-file, hours",
    "POST, /v1/formulas/climate.declination, none",
    "GET, /v1/feeds, none",
    "GET, /v1/feeds/whey, none",
    "GET, /problems, none",
    "GET, /, units",
    "POST, /report, units"
  })
  void aQueryParameterThatAPathDoesNotHave(String method, String path, String allowed) {
    String type =
        path.equals("/report")
            ? "application/x-www-form-urlencoded"
            : path.endsWith("-file") ? "text/plain" : "application/json";
    var request = Service.asking();
    Response response =
        (method.equals("POST") ? request.contentType(type).body("{}") : request)
            .request(method, path + "?unit=si");
    JsonNode error = Service.refused(response, 400, "bad-request").path("errors").get(0);
    assertThat(error.path("code").asText()).isEqualTo("http.unknown-query");
    assertThat(error.path("rejected").asText()).isEqualTo("unit");
    assertThat(error.path("allowed").asText()).isEqualTo(allowed);
    assertThat(error.path("detail").asText()).contains("unit", allowed);
  }

  private static String errorOf(Response response, String problem) {
    return Service.refused(response, 400, problem).path("errors").get(0).path("code").asText();
  }
}
