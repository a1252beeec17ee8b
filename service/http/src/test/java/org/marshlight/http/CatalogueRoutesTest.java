package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the engine knows, as it is served. */
@QuarkusTest
class CatalogueRoutesTest {

  @ParameterizedTest
  @CsvSource({
    "climates, 14",
    "feeds, 12",
    "plants, 6",
    "soils, 6",
    "ingredients, 12",
    "fuels, 6",
    "media, 4",
    "coefficients, 300",
    "sources, 50",
    "formulas, 100",
    "cautions, 8"
  })
  void everyCatalogueListsItemsThatCanBeAskedForAlone(String name, int atLeast) {
    Response response = Service.asking().get("/v1/" + name);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.contentType()).isEqualTo("application/json");
    assertThat(response.header("Cache-Control")).contains("max-age");
    JsonNode items = Service.json(response).path("items");
    assertThat(items.size()).isGreaterThanOrEqualTo(atLeast);
    assertThat(Service.json(response).path("cautions")).isNotEmpty();
    JsonNode last = items.get(items.size() - 1);
    JsonNode alone =
        Service.json(Service.asking().get("/v1/" + name + "/" + last.path("id").asText()));
    assertThat(alone.path("items")).hasSize(1);
    assertThat(alone.path("items").get(0)).isEqualTo(last);
  }

  @ParameterizedTest
  @CsvSource({
    "climates",
    "feeds",
    "plants",
    "soils",
    "ingredients",
    "fuels",
    "media",
    "coefficients"
  })
  void everyItemNamesItsSourceAndHowWellFoundedItIs(String name) {
    JsonNode sources = Service.json(Service.asking().get("/v1/sources")).path("items");
    for (JsonNode item : Service.json(Service.asking().get("/v1/" + name)).path("items")) {
      assertThat(sources.findValuesAsText("id")).contains(item.path("source").asText());
      assertThat(item.path("mark").asText()).isNotBlank();
    }
  }

  @Test
  void anUnknownIdIsAnsweredWithTheNearest() {
    JsonNode problem =
        Service.refused(Service.asking().get("/v1/feeds/goat-manur"), 404, "unknown-id");
    JsonNode error = problem.path("errors").get(0);
    assertThat(error.path("rejected").asText()).isEqualTo("goat-manur");
    assertThat(error.path("params").path("nearest").asText()).isEqualTo("goat-manure");
  }

  @Test
  void whatTheClientHasIsNotSentAgain() {
    Response first = Service.asking().get("/v1/plants");
    String tag = first.header("ETag");
    assertThat(tag).matches("W/\"[0-9a-f]{64}\"");
    assertThat(Service.asking().get("/v1/plants").asByteArray()).isEqualTo(first.asByteArray());
    for (String known : new String[] {tag, "\"x\", " + tag, tag.substring(2), "*"}) {
      Response again = Service.asking().header("If-None-Match", known).get("/v1/plants");
      assertThat(again.statusCode()).as(known).isEqualTo(304);
      assertThat(again.asByteArray()).isEmpty();
    }
    assertThat(Service.asking().header("If-None-Match", "\"x\"").get("/v1/plants").statusCode())
        .isEqualTo(200);
  }
}
