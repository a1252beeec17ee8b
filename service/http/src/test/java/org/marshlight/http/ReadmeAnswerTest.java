package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.CommittedFile;

/** Keeps the abridged answer of the first page of the documentation that of the first request. */
@QuarkusTest
class ReadmeAnswerTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String FIRST_REQUEST = "loop-hill-smallholding.json";
  private static final String NAME = "README.md";
  private static final String OPEN = "The answer, abridged:\n\n```json\n";
  private static final String CLOSE = "\n```\n";

  private static final List<String> SHOWN =
      List.of(
          "estimate/digester/monthly/liquorTemperatureC",
          "estimate/digester/annual/methaneNm3",
          "estimate/digester/annual/gasEnergyKWh",
          "estimate/digester/annual/cookingDemandMetFraction",
          "estimate/wetland/monthly/effluentBod5MgL",
          "estimate/ethanol/annual/ethanolL",
          "estimate/ethanol/annual/netEnergyKWh",
          "estimate/compost/annual/nitrogenKg",
          "meta");

  @Test
  void theAbridgedAnswerIsThatOfTheFirstRequest() throws IOException {
    JsonNode answer =
        Service.json(
            Service.asking()
                .contentType("application/json")
                .body(Files.readAllBytes(Service.SAMPLES.resolve(FIRST_REQUEST)))
                .post("/v1/estimates/loop"));
    ObjectNode abridged = JSON.createObjectNode();
    SHOWN.forEach(path -> copy(answer, abridged, path));
    ObjectNode estimate = (ObjectNode) abridged.get("estimate");
    firstOf(answer.at("/estimate/balances"), estimate.putArray("balances"));
    ObjectNode verdict = firstOf(answer.at("/estimate/verdicts"), estimate.putArray("verdicts"));
    firstOf(answer.at("/estimate/verdicts/0/reasons"), verdict.putArray("reasons"));
    verdict.retain("component", "answer", "basis", "reasons");
    verdict.withArray("reasons").forEach(reason -> ((ObjectNode) reason).remove("params"));
    firstOf(answer.at("/cautions"), abridged.putArray("cautions"));

    String readme = Files.readString(Path.of(System.getProperty("repository")).resolve(NAME));
    int start = readme.indexOf(OPEN) + OPEN.length();
    int end = readme.indexOf(CLOSE, start);
    assertThat(start).isGreaterThan(OPEN.length());
    assertThat(end).isGreaterThan(start);
    CommittedFile.expect(
        NAME, readme.substring(0, start) + abridged.toPrettyString() + readme.substring(end));
  }

  private static void copy(JsonNode from, ObjectNode to, String path) {
    List<String> steps = List.of(path.split("/"));
    ObjectNode place = to;
    for (String step : steps.subList(0, steps.size() - 1)) {
      place = place.withObject("/" + step);
    }
    JsonNode value = from.at("/" + path);
    assertThat(value.isMissingNode()).as(path).isFalse();
    place.set(steps.get(steps.size() - 1), value);
  }

  /** Puts a copy of the first of a list into another. */
  private static ObjectNode firstOf(JsonNode list, ArrayNode to) {
    ObjectNode first = list.get(0).deepCopy();
    to.add(first);
    return first;
  }
}
