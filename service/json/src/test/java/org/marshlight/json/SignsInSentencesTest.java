package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A sentence never says that less than nothing is added, taken out, saved or given off. */
class SignsInSentencesTest {

  private static final Pattern LESS_THAN_NOTHING =
      Pattern.compile(
          "\\b(adds?|takes?|gives?|give off|saves?) -[0-9]"
              + "|-[0-9][0-9.]* [^-,;.]{0,60}\\b(more|less|out of the water)\\b");

  private static final String OPEN_WATER =
      """
      {
        "site": {"climate": {"id": "gainesville"}},
        "given": {"effluent": {"flowM3Day": 1, "bod5MgL": %s, "codMgL": %s}},
        "beds": [{"kind": "free-water-surface", "areaM2": 25}]
      }
      """;

  static Stream<String> samples() {
    return SamplePlans.names().stream();
  }

  private static JsonNode answer(String plan) throws IOException {
    return SamplePlans.written(plan);
  }

  private static List<String> texts(JsonNode answer) {
    List<String> texts = new ArrayList<>(answer.path("notices").findValuesAsText("text"));
    answer
        .at("/estimate/verdicts")
        .forEach(verdict -> texts.addAll(verdict.findValuesAsText("text")));
    texts.addAll(answer.at("/estimate/alternatives").findValuesAsText("text"));
    return texts;
  }

  private static void assertSigns(JsonNode answer) {
    List<String> texts = texts(answer);
    assertThat(texts).isNotEmpty();
    assertThat(texts)
        .allSatisfy(text -> assertThat(LESS_THAN_NOTHING.matcher(text).find()).as(text).isFalse());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noSampleTellsLessThanNothing(String sample) throws IOException {
    assertSigns(answer(new String(SamplePlans.request(sample), StandardCharsets.UTF_8)));
  }

  /** Glass, a feed and a quilt that bring nothing or less. */
  @Test
  void whatDoesHarmIsToldAsAChange() throws IOException {
    ObjectNode plan =
        (ObjectNode) ContractJson.mapper().readTree(SamplePlans.request("loop-cold-holiday-house"));
    plan.putArray("feeds").addObject().put("feed", "kitchen-scraps").put("freshKgPerDay", 300);
    assertSigns(answer(plan.toString()));
  }

  /**
   * The limits that are reported of an overloaded bed are those of its own figures, and of its
   * kind.
   */
  @Test
  void anOverloadedOpenBedTurnsFoulAndDoesNotClog() throws IOException {
    JsonNode answer = answer(OPEN_WATER.formatted("500", "1000"));
    JsonNode loading = answer.at("/estimate/wetland/beds/0/loading");
    assertThat(loading.path("answer").asText()).isEqualTo("insufficient");
    JsonNode told = null;
    for (JsonNode notice : answer.path("notices")) {
      assertThat(notice.path("code").asText()).isNotEqualTo("wetland.overloaded");
      if (notice.path("code").asText().equals("wetland.open-overloaded")) {
        told = notice;
      }
    }
    assertThat(told).isNotNull();
    assertThat(told.path("text").asText()).contains("foul").doesNotContain("gravel", "clog");
    assertThat(told.at("/params/warn").asDouble()).isEqualTo(loading.path("warnGM2Day").asDouble());
    assertThat(told.at("/params/limit").asDouble())
        .isEqualTo(loading.path("refuseGM2Day").asDouble());
  }
}
