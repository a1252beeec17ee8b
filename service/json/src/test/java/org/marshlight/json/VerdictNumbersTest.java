package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marshlight.contract.Sentences;

/** Every number that a sentence of a verdict tells stands in the same answer. */
class VerdictNumbersTest {

  /** Names of things that hold a digit, and names of beds, which are the planner's. */
  private static final Pattern NAMES = Pattern.compile("BOD5|\\bm[23]\\b|\\b(bed|loop)-\\d+");

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final double NEAR = 1e-9;
  private static final double PERCENT = 100;
  private static final double SAME_PERCENT = 1e-6;

  /**
   * Numbers that stand in their sentence alone: each is a side of a difference that the verdict
   * gives, or a share of two numbers that it gives.
   */
  private static final Set<String> OF_THE_SENTENCE =
      Set.of(
          "decision.gas-useful.share",
          "decision.still-working.expectedKWh",
          "decision.still-working.workingPercent",
          "decision.glass-useful.perM2",
          "decision.glass-warms.withoutC",
          "decision.quilt-useful.perM2",
          "decision.feeding-useful.withoutKWh",
          "decision.feeding-outflow.withBodKg",
          "decision.feeding-outflow.withoutBodKg",
          "decision.beds-without.withBodKg",
          "decision.beds-without.withNitrogenKg",
          "decision.beds-without.withoutBodKg",
          "decision.beds-without.withoutNitrogenKg",
          "decision.beds-leave.bodPercent",
          "decision.beds-leave.nitrogenPercent",
          "decision.bed-leaves.bodPercent",
          "decision.bed-leaves.nitrogenPercent",
          "decision.bed-takes.bodPercent",
          "decision.bed-takes.nitrogenPercent",
          "decision.compost-without.withoutKg");

  static Stream<String> samples() {
    return SamplePlans.names().stream();
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySentenceIsBuiltFromNumbersOfItsOwn(String sample) throws IOException {
    List<JsonNode> sentences = sentences(answer(sample));
    assertThat(sentences).isNotEmpty();
    for (JsonNode sentence : sentences) {
      Set<String> told = new TreeSet<>();
      Matcher numbers =
          NUMBER.matcher(NAMES.matcher(sentence.path("text").asText()).replaceAll(""));
      while (numbers.find()) {
        told.add(numbers.group());
      }
      Set<String> known =
          numbers(sentence.path("params")).values().stream()
              .map(Sentences::number)
              .collect(Collectors.toSet());
      assertThat(known).as(sentence.toString()).containsAll(told);
      assertThat(told).as(sentence.toString()).containsAll(known);
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void whatASentenceTellsStandsAmongTheFiguresOfTheAnswer(String sample) throws IOException {
    JsonNode answer = answer(sample);
    TreeSet<Double> figures = new TreeSet<>();
    gather(answer, figures);
    for (JsonNode sentence : sentences(answer)) {
      String code = sentence.path("code").asText();
      numbers(sentence.path("params"))
          .forEach(
              (name, value) -> {
                if (!OF_THE_SENTENCE.contains(code + "." + name)) {
                  assertThat(stands(value, figures)).as("%s %s %s", code, name, value).isTrue();
                }
              });
    }
  }

  /** The two sides that a sentence tells differ by what the verdict's difference says. */
  @ParameterizedTest
  @MethodSource("samples")
  void sidesThatSentencesTellMakeUpTheDifference(String sample) throws IOException {
    for (JsonNode verdict : answer(sample).at("/estimate/verdicts")) {
      JsonNode difference = verdict.path("difference");
      for (JsonNode reason : verdict.path("reasons")) {
        JsonNode told = reason.path("params");
        switch (reason.path("code").asText()) {
          case "decision.beds-without" -> {
            assertSides(told, "withBodKg", "withoutBodKg", difference.path("outflowBod5Kg"));
            assertSides(
                told, "withNitrogenKg", "withoutNitrogenKg", difference.path("outflowNitrogenKg"));
          }
          case "decision.feeding-useful" ->
              assertSides(told, "withKWh", "withoutKWh", difference.path("usefulEnergyKWh"));
          case "decision.gas-useful" ->
              assertThat(told.path("share").asDouble() * told.path("threshold").asDouble())
                  .isCloseTo(told.path("usefulKWh").asDouble(), withinPercentage(SAME_PERCENT));
          case "decision.still-working" ->
              assertThat(told.path("workingPercent").asDouble())
                  .isCloseTo(
                      PERCENT
                          * Math.pow(
                              1 - told.path("failingPercent").asDouble() / PERCENT,
                              told.path("years").asDouble()),
                      withinPercentage(SAME_PERCENT));
          default -> {}
        }
      }
    }
  }

  private static void assertSides(JsonNode told, String with, String without, JsonNode difference) {
    assertThat(told.path(with).asDouble() - told.path(without).asDouble())
        .isCloseTo(difference.asDouble(), within(1e-6));
  }

  private static JsonNode answer(String sample) throws IOException {
    return ContractJson.mapper().readTree(ContractJson.write(SamplePlans.answer(sample)));
  }

  private static List<JsonNode> sentences(JsonNode answer) {
    List<JsonNode> sentences = new ArrayList<>();
    for (JsonNode verdict : answer.at("/estimate/verdicts")) {
      verdict.path("reasons").forEach(sentences::add);
      verdict.path("conditions").forEach(sentences::add);
    }
    return sentences;
  }

  private static Map<String, Double> numbers(JsonNode params) {
    return params.properties().stream()
        .filter(param -> param.getValue().isNumber())
        .collect(Collectors.toMap(Map.Entry::getKey, param -> param.getValue().asDouble()));
  }

  /** Every number of an answer but those that sentences were built from. */
  private static void gather(JsonNode node, Set<Double> figures) {
    if (node.isNumber()) {
      figures.add(Math.abs(node.asDouble()));
    } else if (node.isArray()) {
      node.forEach(item -> gather(item, figures));
    } else {
      node.properties()
          .forEach(
              field -> {
                if (!field.getKey().equals("params")) {
                  gather(field.getValue(), figures);
                }
              });
    }
  }

  /** Whether a number stands among figures, as it is or as a fraction that it is percent of. */
  private static boolean stands(double value, TreeSet<Double> figures) {
    return near(Math.abs(value), figures) || near(Math.abs(value) / PERCENT, figures);
  }

  private static boolean near(double value, TreeSet<Double> figures) {
    double margin = NEAR * Math.max(value, NEAR);
    Double next = figures.ceiling(value - margin);
    return next != null && next <= value + margin;
  }
}
