package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** No response whatsoever leaves without its cautions. */
@QuarkusTest
class CautionsEverywhereTest {

  @ParameterizedTest
  @CsvSource({
    "GET, /, 200",
    "HEAD, /, 200",
    "GET, /problems, 200",
    "GET, /v1/feeds, 200",
    "HEAD, /v1/feeds, 200",
    "HEAD, /v1/feeds/nope, 404",
    "HEAD, /nope, 404",
    "OPTIONS, /v1/feeds, 204",
    "GET, /q/health, 200",
    "GET, /q/health/live, 200",
    "GET, /q/health/ready, 200",
    "GET, /q/metrics, 200",
    "GET, /q/openapi, 200",
    "GET, /q/nope, 404",
    "GET, /favicon.ico, 404",
    "GET, /v1/feeds/%2e%2e, 404",
    "GET, /v1//feeds, 200",
  })
  void onEveryPath(String method, String path, int status) {
    Response response = Service.asking().request(method, path);
    assertThat(response.statusCode()).isEqualTo(status);
    Service.cautioned(response);
  }

  @Test
  void onAnswersThatTheClientHas() {
    String tag = Service.asking().get("/v1/soils").header("ETag");
    Response response = Service.asking().header("If-None-Match", tag).get("/v1/soils");
    assertThat(response.statusCode()).isEqualTo(304);
    assertThat(response.header("ETag")).isEqualTo(tag);
    Service.cautioned(response);
  }

  @Test
  void anEstimateNamesTheCautionsOfItsOwnPlan() {
    Response whole = Service.post("/v1/estimates/loop", Service.contractPlan());
    List<String> ids = whole.jsonPath().getList("cautions.id");
    assertThat(whole.header("Cautions")).isEqualTo(String.join(", ", ids));
    Response tank =
        Service.post(
            "/v1/estimates/loop",
            "{\"site\": {\"climate\": {\"id\": \"burlington\"}}, \"people\": {}, \"tank\": {}}");
    assertThat(tank.statusCode()).as(tank.asString()).isEqualTo(200);
    assertThat(tank.header("Cautions")).contains("methane-explosion").doesNotContain("distilling");
  }

  static Stream<String> unreadable() {
    return Stream.of(
        "GARBAGE\r\n\r\n",
        "GET /a b HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /%zz HTTP/1.1\r\nHost: a\r\n\r\n",
        "HEAD /%zz HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /v1/feeds?x=%zz HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /\\..\\x HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /\u0000 HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET foo HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n",
        "GET * HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n",
        "CONNECT a:80 HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n",
        "GET / HTTP/1.1\r\nConnection: close\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: a\r\nBad Header\r\n\r\n",
        "GET /" + "x".repeat(20_000) + " HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET / HTTP/1.1\r\nHost: a\r\nX: " + "x".repeat(200_000) + "\r\n\r\n",
        "POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nContent-Length: abc\r\n\r\n",
        "POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nContent-Length: 5\r\n"
            + "Content-Length: 6\r\n\r\n{}   ",
        "POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
            + "Content-Length: 2\r\nExpect: wonders\r\nConnection: close\r\n\r\n{}",
        "POST /report HTTP/1.1\r\nHost: a\r\nContent-Type: application/x-www-form-urlencoded\r\n"
            + "Content-Length: 8\r\nConnection: close\r\n\r\nplan=%zz",
        "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n");
  }

  @ParameterizedTest
  @MethodSource("unreadable")
  void onRequestsThatNoRouterEverSees(String request) throws IOException {
    String answer = RawRequest.send(request);
    assertThat(answer)
        .matches("(?s)HTTP/\\d.\\d 4\\d\\d .*")
        .containsIgnoringCase("\r\nCautions: methane-explosion")
        .contains("</v1/cautions>; rel=\"help\"")
        .containsIgnoringCase("content-type: application/problem+json")
        .contains("\"cautions\":[{")
        .doesNotContain("<html");
  }
}
