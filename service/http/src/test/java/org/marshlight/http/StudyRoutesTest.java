package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.http.studies.StudyFloor;

@QuarkusTest
class StudyRoutesTest {

  private static final String PLAN =
      "{\"site\":{\"climate\":{\"id\":\"burlington\"}},\"people\":{\"count\":3},"
          + "\"tank\":{\"liquidVolumeM3\":4},\"cover\":{}}";
  private static final String UNCERTAINTY = "/v1/studies/uncertainty";

  @TestHTTPResource("/")
  URI service;

  @Inject StudyFloor floor;

  private static String study(String settings) {
    return "{\"plan\":" + PLAN + settings + "}";
  }

  private static Response lines(String path, String body) {
    return Service.asking()
        .header("Accept", "application/x-ndjson")
        .contentType("application/json")
        .body(body.getBytes(StandardCharsets.UTF_8))
        .post(path);
  }

  @Test
  void aStudyComesInAnEnvelopeWithCautions() {
    Response response = Service.post(UNCERTAINTY, study(",\"draws\":16"));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    JsonNode answer = Service.json(response);
    assertThat(answer.fieldNames())
        .toIterable()
        .containsExactly("study", "cautions", "assumptions", "notices", "meta");
    assertThat(answer.path("cautions")).isNotEmpty();
    assertThat(answer.at("/meta/planSha256").asText()).hasSize(64);
    assertThat(answer.at("/study/figures")).isNotEmpty();
    assertThat(response.header("Vary")).isEqualTo("Accept, Accept-Encoding");
    Service.cautioned(response);
  }

  @Test
  void theSameRequestIsAnsweredWithTheSameBytes() {
    String body = study(",\"draws\":40,\"seed\":3");
    assertThat(Service.post(UNCERTAINTY, body).asByteArray())
        .isEqualTo(Service.post(UNCERTAINTY, body).asByteArray());
  }

  @Test
  void aStreamOpensWithCautionsAndCostAndEndsWithTheAnswer() throws Exception {
    String body = study(",\"draws\":64");
    Response response = lines(UNCERTAINTY, body);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.contentType()).startsWith("application/x-ndjson");
    Service.cautioned(response);
    List<JsonNode> lines = new ArrayList<>();
    for (String line : response.asString().split("\n")) {
      lines.add(Service.JSON.readTree(line));
    }
    assertThat(lines.get(0).path("cautions")).isNotEmpty();
    assertThat(lines.get(0).at("/cost/chainRuns").asInt()).isEqualTo(64);
    assertThat(lines.subList(1, lines.size() - 1))
        .hasSizeGreaterThan(3)
        .allSatisfy(line -> assertThat(line.path("of").asInt()).isEqualTo(64))
        .extracting(line -> line.path("done").asInt())
        .isSorted()
        .endsWith(64);
    assertThat(lines.get(lines.size() - 1))
        .isEqualTo(Service.json(Service.post(UNCERTAINTY, body)));
  }

  @Test
  void aStreamThatIsRefusedIsAProblemDocument() {
    Service.refused(lines(UNCERTAINTY, study(",\"draws\":1e9")), 400, "wrong-fields");
    Service.refused(lines(UNCERTAINTY, "{"), 400, "malformed-json");
  }

  @Test
  void theCostAloneIsToldWithoutARun() {
    Response response = Service.post(UNCERTAINTY + "?costOnly=true", study(",\"draws\":2000"));
    assertThat(Service.json(response).at("/cost/chainRuns").asInt()).isEqualTo(2000);
    assertThat(Service.json(response).path("cautions")).isNotEmpty();
    Service.refused(Service.post(UNCERTAINTY + "?costOnly=perhaps", study("")), 400, "bad-request");
  }

  @Test
  void aLongStudyIsRefusedAsOneDocumentAndOfferedLineByLine() {
    String body = study(",\"draws\":16384");
    JsonNode error =
        Service.refused(Service.post(UNCERTAINTY, body), 400, "wrong-fields").at("/errors/0");
    assertThat(error.path("code").asText()).isEqualTo("http.long-study");
    assertThat(error.path("pointer").asText()).isEqualTo("/draws");
    assertThat(error.path("rejected").asInt()).isEqualTo(16384);
    assertThat(error.path("allowed").asText()).contains("8192", "application/x-ndjson");
    assertThat(error.path("detail").asText()).contains("Accept: application/x-ndjson");
    assertThat(Service.post(UNCERTAINTY + "?costOnly=true", body).statusCode()).isEqualTo(200);
  }

  @Test
  void onlyASweepComesAsATable() {
    String sweep =
        study(
            ",\"vary\":[{\"pointer\":\"/cover/apertureM2\",\"values\":[1,2]}],"
                + "\"outputs\":[\"digester.gasEnergyKWh\"]");
    Response table =
        Service.asking()
            .header("Accept", "text/csv")
            .contentType("application/json")
            .body(sweep.getBytes(StandardCharsets.UTF_8))
            .post("/v1/studies/sweep");
    assertThat(table.statusCode()).as(table.asString()).isEqualTo(200);
    assertThat(table.asString())
        .startsWith("kind,id,first,second,value,unit,text\r\ncaution,")
        .contains("\r\naxis,first,,,,m2,/cover/apertureM2\r\n")
        .contains("\r\nvalue,digester.gasEnergyKWh,1.0,,");
    Service.cautioned(table);
    Response other =
        Service.asking()
            .header("Accept", "text/csv")
            .contentType("application/json")
            .body(study("").getBytes(StandardCharsets.UTF_8))
            .post(UNCERTAINTY);
    Service.refused(other, 406, "not-acceptable");
  }

  @Test
  void variantsAreNamedAsTheyWereSent() {
    JsonNode problem =
        Service.refused(
            Service.post(
                "/v1/studies/comparison",
                study(
                    ",\"variants\":[{\"name\":\"tiny\","
                        + "\"patch\":{\"tank\":{\"liquidVolumeM3\":0.01}}}]")),
            400,
            "wrong-fields");
    assertThat(problem.at("/errors/0/pointer").asText())
        .isEqualTo("/variants/0/patch/tank/liquidVolumeM3");
    assertThat(problem.at("/errors/0/detail").asText()).contains("tiny");
  }

  @Test
  void wrongPlansAreFoundUnderThePlan() {
    JsonNode problem =
        Service.refused(
            Service.post(UNCERTAINTY, "{\"plan\":{\"site\":{\"climate\":{\"id\":\"mars\"}}}}"),
            400,
            "wrong-fields");
    assertThat(problem.at("/errors/0/pointer").asText()).isEqualTo("/plan/site/climate/id");
    Service.refused(Service.post(UNCERTAINTY, "{}"), 400, "wrong-fields");
  }

  @Test
  void aClientThatGoesAwayStopsItsStudy() throws Exception {
    int before = floor.free();
    byte[] body = study(",\"draws\":16384").getBytes(StandardCharsets.UTF_8);
    try (Socket socket = new Socket(service.getHost(), service.getPort())) {
      socket
          .getOutputStream()
          .write(
              ("POST "
                      + UNCERTAINTY
                      + " HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
                      + "Accept: application/x-ndjson\r\nContent-Length: "
                      + body.length
                      + "\r\n\r\n")
                  .getBytes(StandardCharsets.US_ASCII));
      socket.getOutputStream().write(body);
      socket.getOutputStream().flush();
      InputStream in = socket.getInputStream();
      assertThat(in.readNBytes(2000)).isNotEmpty();
      assertThat(floor.free()).isEqualTo(before - 1);
      Patience.until(floor::running);
    }
    Patience.until(() -> floor.free() == before);
    Patience.until(() -> !floor.running());
  }

  @Test
  void tooManyStudiesAtATimeAreToldToComeBack() {
    List<StudyFloor.Place> taken = new ArrayList<>();
    try {
      while (floor.free() > 0) {
        taken.add(floor.enter());
      }
      Response response = Service.post(UNCERTAINTY, study(",\"draws\":16"));
      Service.refused(response, 503, "overloaded");
      assertThat(response.header("Retry-After")).isEqualTo("1");
    } finally {
      taken.forEach(StudyFloor.Place::leave);
    }
    assertThat(Service.post(UNCERTAINTY, study(",\"draws\":16")).statusCode()).isEqualTo(200);
  }

  @Test
  void aBreakEvenStudyIsStreamedLeverByLever() throws Exception {
    String body = study(",\"component\":\"glass\",\"levers\":[\"feed\",\"glass\"]");
    Response response = lines("/v1/studies/break-even", body);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    Service.cautioned(response);
    String[] lines = response.asString().split("\n");
    assertThat(Service.JSON.readTree(lines[0]).path("cautions")).isNotEmpty();
    assertThat(Service.JSON.readTree(lines[1]).path("of").asInt()).isEqualTo(2);
    JsonNode answer = Service.JSON.readTree(lines[lines.length - 1]);
    assertThat(answer.at("/study/now/component").asText()).isEqualTo("glass");
    assertThat(answer.at("/study/changes")).hasSize(2);
    assertThat(answer).isEqualTo(Service.json(Service.post("/v1/studies/break-even", body)));
  }

  @Test
  void aBuildOrderComesWithTheCautionsOfItsPlan() {
    Response response = Service.post("/v1/studies/build-order", study(""));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    Service.cautioned(response);
    JsonNode answer = Service.json(response);
    assertThat(answer.at("/study/phases/0/step").asText()).isEqualTo("tank");
    assertThat(answer.path("cautions")).isNotEmpty();
  }

  @Test
  void aBreakEvenStudyWithoutItsPartIsRefusedByField() {
    JsonNode problem =
        Service.refused(Service.post("/v1/studies/break-even", study("")), 400, "wrong-fields");
    assertThat(problem.at("/errors/0/pointer").asText()).isEqualTo("/component");
    JsonNode unknown =
        Service.refused(
            Service.post("/v1/studies/break-even", study(",\"component\":\"glas\"")),
            400,
            "wrong-fields");
    assertThat(unknown.at("/errors/0/pointer").asText()).isEqualTo("/component");
  }
}
