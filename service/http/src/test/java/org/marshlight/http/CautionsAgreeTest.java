package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marshlight.http.contract.Sample;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/** The cautions that the head of a response names are those that its body lists. */
@QuarkusTest
class CautionsAgreeTest {

  private static final String LINES = "application/x-ndjson";

  /** Of these the other plans are only found by the study, after the head has been sent. */
  private static final Set<String> FINDING_PLANS =
      Set.of("sizing", "sweep", "calibration", "break-even", "build-order");

  static Stream<Sample> samples() {
    return Sample.all().stream();
  }

  static Stream<Sample> studies() {
    return samples()
        .filter(sample -> sample.path().startsWith("/v1/studies/"))
        .filter(sample -> !sample.path().contains("?"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void ofEverySample(Sample sample) throws IOException {
    Response response = send(sample, sample.accept());
    List<String> named = named(response);
    if (response.contentType().contains("json")) {
      assertThat(ids(Service.json(response))).isEqualTo(named);
    } else if (response.contentType().startsWith("text/csv")) {
      assertThat(idsOfTable(response.asString())).isEqualTo(named);
    } else {
      assertThat(hazards(response.asString())).isEqualTo(Set.copyOf(named));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("studies")
  void ofEveryStudyToldLineByLine(Sample sample) throws IOException {
    Response response = send(sample, LINES);
    List<String> named = named(response);
    if (response.statusCode() != 200) {
      assertThat(ids(Service.json(response))).isEqualTo(named);
      return;
    }
    String[] lines = response.asString().split("\n");
    assertThat(ids(Service.JSON.readTree(lines[0]))).isEqualTo(named);
    JsonNode last = Service.JSON.readTree(lines[lines.length - 1]);
    assertThat(ids(last)).isEqualTo(named(send(sample, "application/json")));
    if (FINDING_PLANS.stream().anyMatch(sample.path()::endsWith)) {
      assertThat(ids(last)).containsAll(named);
    } else {
      assertThat(ids(last)).isEqualTo(named);
    }
  }

  @Test
  void ofAPlanWhoseCautionsHaveNumbers() {
    Sample glazed =
        Sample.all().stream()
            .filter(sample -> sample.name().equals("uncertainty-glazed-tank"))
            .findFirst()
            .orElseThrow();
    assertThat(ids(Service.json(send(glazed, "application/json"))))
        .contains(
            "pathogens",
            "gas-indoors",
            "gas-heavy",
            "gas-sulphide",
            "gas-store",
            "glass-heat",
            "scald");
  }

  @Test
  void ofThePage() {
    Response page = Service.asking().get("/");
    assertThat(hazards(page.asString())).isEqualTo(Set.copyOf(named(page)));
  }

  @Test
  void ofWhatOnlyOnePointOfASweepRaises() throws IOException {
    String sweep =
        "{\"plan\":{\"site\":{\"climate\":{\"id\":\"burlington\"}},\"people\":{},\"tank\":{},"
            + "\"cover\":{\"kind\":\"glazed\",\"apertureM2\":0.5}},"
            + "\"vary\":[{\"pointer\":\"/cover/apertureM2\",\"values\":[0.5,12]}]}";
    Response response = Service.post("/v1/studies/sweep", sweep);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    assertThat(ids(Service.json(response))).isEqualTo(named(response)).contains("scald");
  }

  @Test
  void ofWhatStandsAfterOnePhaseOfABuildOrder() {
    Response response = Service.post("/v1/studies/build-order", "{\"plan\":" + plan() + "}");
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    assertThat(ids(Service.json(response)))
        .as("the tank is built before its gas is caught")
        .isEqualTo(named(response))
        .contains("gas-vented", "gas-store");
  }

  private static String plan() {
    return "{\"site\":{\"climate\":{\"id\":\"burlington\"}},\"people\":{},\"tank\":{},"
        + "\"feeds\":[{\"feed\":\"kitchen-scraps\",\"freshKgPerDay\":5}],"
        + "\"gas\":{\"surplus\":\"flare\",\"uses\":[{\"use\":\"cooking\",\"hoursPerDay\":1}]}}";
  }

  private static Response send(Sample sample, String accept) {
    var request = Service.asking().header("Accept", accept);
    return sample.body().isEmpty()
        ? request.request(sample.method(), sample.path())
        : request
            .contentType(sample.bodyType())
            .body(sample.body().getBytes(StandardCharsets.UTF_8))
            .request(sample.method(), sample.path());
  }

  private static List<String> named(Response response) {
    return Arrays.asList(response.header("Cautions").split(", "));
  }

  private static List<String> ids(JsonNode document) {
    List<String> ids = new ArrayList<>();
    document.path("cautions").forEach(caution -> ids.add(caution.path("id").asText()));
    return ids;
  }

  private static List<String> idsOfTable(String csv) throws IOException {
    try (var parser = CSVFormat.RFC4180.parse(new StringReader(csv))) {
      return parser.getRecords().stream()
          .filter(row -> row.get(0).equals("caution"))
          .map((CSVRecord row) -> row.get(1))
          .toList();
    }
  }

  /** Ids of the cautions whose hazard a page shows as one. */
  private static Set<String> hazards(String html) {
    return CautionBook.standard().all().stream()
        .filter(caution -> html.contains(": " + escaped(caution.hazard()) + ".</strong>"))
        .map(Caution::id)
        .collect(Collectors.toSet());
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("'", "&#39;").replace("\"", "&quot;");
  }
}
