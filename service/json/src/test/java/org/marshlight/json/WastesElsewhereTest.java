package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.evidence.Catalogues;

/** What wastes do that a plan does not feed is counted once, whichever way they go. */
class WastesElsewhereTest {

  private static final double DAYS = 365;
  private static final double ROUNDING = 1e-9;
  private static final String COMPOSTING = "decision.instead-composting";

  private static ObjectNode smallholding() throws IOException {
    return (ObjectNode)
        ContractJson.mapper().readTree(SamplePlans.request("loop-hill-smallholding"));
  }

  private static ObjectNode fed(String feed, double kgPerDay) throws IOException {
    ObjectNode plan = smallholding();
    plan.putArray("feeds").addObject().put("feed", feed).put("freshKgPerDay", kgPerDay);
    return plan;
  }

  private static JsonNode estimate(ObjectNode plan) throws IOException {
    return SamplePlans.written(plan.toString()).path("estimate");
  }

  private static JsonNode alternative(JsonNode estimate, String code) {
    for (JsonNode alternative : estimate.path("alternatives")) {
      if (alternative.path("code").asText().equals(code)) {
        return alternative;
      }
    }
    throw new AssertionError("no alternative " + code);
  }

  private static double toLand(JsonNode estimate, String quantity) {
    double sum = 0;
    for (JsonNode flow : estimate.path("flows")) {
      if (flow.path("to").asText().equals("land")
          && flow.path("quantity").asText().equals(quantity)) {
        sum += flow.path("perYear").asDouble();
      }
    }
    return sum;
  }

  /** Weight of what the plan gives off itself, less what it spares elsewhere. */
  private static double over100Kg(JsonNode estimate) {
    double sum = 0;
    for (JsonNode line : estimate.at("/greenhouseGas/lines")) {
      double weight = line.at("/weight/over100YearsKg").asDouble();
      String code = line.path("code").asText();
      if (line.path("side").asText().equals("plan")) {
        sum += weight;
      } else if (code.startsWith("decision.gases-displaced")
          || code.equals("decision.gases-fertiliser")) {
        sum -= weight;
      }
    }
    return sum;
  }

  /**
   * Two plans run apart are the independent account of what the alternative says of one of them.
   */
  @ParameterizedTest
  @CsvSource({
    "kitchen-scraps, kitchen-scraps",
    "horse-manure, horse-manure",
    "garden-grass, grass-clippings"
  })
  void compostingInsteadIsTheDifferenceOfTwoPlans(String feed, String ingredient)
      throws IOException {
    double kgPerDay = 2;
    JsonNode with = estimate(fed(feed, kgPerDay));
    ObjectNode other = smallholding();
    other.remove("feeds");
    ((ArrayNode) other.at("/compost/ingredients"))
        .addObject()
        .put("ingredient", ingredient)
        .put("freshKgPerYear", kgPerDay * DAYS)
        .put("humanOrigin", false);
    JsonNode instead = estimate(other);
    JsonNode params = alternative(with, COMPOSTING).path("params");
    for (String quantity : List.of("nitrogen", "phosphorus", "potassium")) {
      assertThat(params.path(quantity + "Kg").asDouble())
          .as(quantity)
          .isCloseTo(toLand(instead, quantity) - toLand(with, quantity), within(ROUNDING));
    }
    assertThat(params.path("over100Kg").asDouble())
        .isCloseTo(over100Kg(instead) - over100Kg(with), within(ROUNDING));
  }

  /** 2 kg of kitchen scraps a day hold 0.73 kg of phosphorus a year: no more can come back. */
  @Test
  void noMorePhosphorusComesBackThanTheScrapsHold() throws IOException {
    JsonNode estimate = estimate(fed("kitchen-scraps", 2));
    double fed = 0;
    for (JsonNode flow : estimate.path("flows")) {
      if (flow.path("from").asText().equals("feeds")
          && flow.path("quantity").asText().equals("phosphorus")) {
        fed += flow.path("perYear").asDouble();
      }
    }
    assertThat(fed).isCloseTo(0.73, within(0.01));
    assertThat(alternative(estimate, COMPOSTING).at("/params/phosphorusKg").asDouble())
        .isBetween(0.0, 1.2 * fed);
  }

  @ParameterizedTest
  @CsvSource({
    "whey, Whey to land as it is",
    "stillage, Starch stillage to land as it is",
    "used-cooking-oil, Used cooking oil to refuse"
  })
  void whatNoPileTakesIsNamedWithItsOtherWay(String feed, String way) throws IOException {
    ObjectNode plan = fed("kitchen-scraps", 2);
    ((ArrayNode) plan.path("feeds")).addObject().put("feed", feed).put("freshKgPerDay", 1);
    assertThat(alternative(estimate(plan), COMPOSTING + "-some").path("text").asText())
        .contains("(" + way + ")");
  }

  @Test
  void everyFeedOfTheCatalogueIsPlacedOnAPileOrElsewhere() throws IOException {
    for (String feed : Catalogues.standard().ids("feeds")) {
      ObjectNode plan = fed("kitchen-scraps", 2);
      ((ArrayNode) plan.path("feeds")).addObject().put("feed", feed).put("freshKgPerDay", 0.1);
      JsonNode estimate = estimate(plan);
      boolean whole = false;
      for (JsonNode alternative : estimate.path("alternatives")) {
        whole |= alternative.path("code").asText().equals(COMPOSTING);
      }
      assertThat(whole)
          .as(feed)
          .isEqualTo(!List.of("whey", "stillage", "used-cooking-oil").contains(feed));
    }
  }

  /** The usual household is four people, in every stage of the answer. */
  @Test
  void aHouseholdWithoutACountIsTheUsualOneEverywhere() throws IOException {
    ObjectNode counted = smallholding();
    counted.remove("feeds");
    counted.putObject("people").put("count", 4);
    ObjectNode usual = counted.deepCopy();
    usual.putObject("people");
    JsonNode scraps = alternative(estimate(usual), "decision.instead-scraps");
    assertThat(scraps.at("/params/scrapsKg").asDouble()).isCloseTo(1.2, within(ROUNDING));
    assertThat(scraps).isEqualTo(alternative(estimate(counted), "decision.instead-scraps"));
  }

  /** A waste that is composted has another way without the plan too, if the baseline names it. */
  @Test
  void theBaselineOfAnIngredientOfThePileIsCounted() throws IOException {
    ObjectNode silent = smallholding();
    silent.remove("feeds");
    silent
        .withObject("/compost")
        .putArray("ingredients")
        .addObject()
        .put("ingredient", "horse-manure")
        .put("freshKgPerYear", 1000);
    ObjectNode stated = silent.deepCopy();
    stated
        .withObject("/baseline")
        .putArray("feeds")
        .addObject()
        .put("feed", "horse-manure")
        .put("fate", "store")
        .put("yearlyCost", 50);
    JsonNode before = estimate(silent);
    JsonNode after = estimate(stated);
    assertThat(lines(after)).contains("decision.gases-store-without");
    assertThat(lines(before)).doesNotContain("decision.gases-store-without");
    assertThat(compost(after).at("/difference/landPhosphorusKg").asDouble())
        .isLessThan(compost(before).at("/difference/landPhosphorusKg").asDouble());
    assertThat(
            after.at("/money/investment/expectedNetPresentValue").asDouble()
                - before.at("/money/investment/expectedNetPresentValue").asDouble())
        .isNotNegative();
  }

  private static List<String> lines(JsonNode estimate) {
    return estimate.at("/greenhouseGas/lines").findValuesAsText("code");
  }

  private static JsonNode compost(JsonNode estimate) {
    for (JsonNode verdict : estimate.path("verdicts")) {
      if (verdict.path("component").asText().equals("compost")) {
        return verdict;
      }
    }
    throw new AssertionError("no verdict on compost");
  }
}
