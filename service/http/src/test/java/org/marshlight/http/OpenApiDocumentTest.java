package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.CommittedFile;
import org.marshlight.http.door.Surface;

/** The OpenAPI document is committed, passes the usual rules of linters, and tells the truth. */
@QuarkusTest
class OpenApiDocumentTest {

  private static final Set<String> METHODS = Set.of("get", "post", "put", "delete", "patch");

  /** Whole numbers up to here are exact as doubles. */
  private static final double GREATEST_BOUND = 1e15;

  private JsonNode document;

  @BeforeEach
  void read() {
    document = Service.json(Service.asking().get("/q/openapi?format=json"));
  }

  @Test
  void theCommittedDocumentIsTheOneServed() {
    CommittedFile.expect("openapi/marshlight.yaml", Service.asking().get("/q/openapi").asString());
  }

  @Test
  void infoIsWhole() {
    assertThat(document.path("openapi").asText()).isEqualTo("3.1.0");
    JsonNode info = document.path("info");
    for (String name : new String[] {"title", "version", "description"}) {
      assertThat(info.path(name).asText()).as(name).isNotBlank();
    }
    assertThat(info.path("contact").path("name").asText()).isNotBlank();
    assertThat(document.path("servers").get(0).path("url").asText()).isEqualTo("/");
    assertThat(document.path("security").isArray()).as("security is stated: none").isTrue();
  }

  @Test
  void everyOperationSaysWhatItIsAndHowItCanBeRefused() {
    List<String> ids = new ArrayList<>();
    Set<String> tags = new HashSet<>(document.path("tags").findValuesAsText("name"));
    operations(
        (where, operation) -> {
          ids.add(operation.path("operationId").asText());
          assertThat(operation.path("summary").asText()).as(where).isNotBlank();
          assertThat(operation.path("tags")).as(where).isNotEmpty();
          operation.path("tags").forEach(tag -> assertThat(tags).contains(tag.asText()));
          Set<String> statuses = new TreeSet<>();
          operation.path("responses").fieldNames().forEachRemaining(statuses::add);
          assertThat(statuses).as(where).contains("200", "406", "500");
          if (where.startsWith("post")) {
            assertThat(statuses).as(where).contains("400", "413", "415");
            operation
                .at("/requestBody/content")
                .forEach(body -> assertThat(body.path("examples")).as(where).isNotEmpty());
            assertThat(operation.at("/requestBody/content")).as(where).isNotEmpty();
          }
          if (where.contains("{id}")) {
            assertThat(statuses).as(where).contains("404");
          }
        });
    assertThat(ids).doesNotContain("").doesNotHaveDuplicates();
  }

  @Test
  void noTwoPathsAreAmbiguousAndNoneEndsWithASlash() {
    Set<String> shapes = new HashSet<>();
    document
        .path("paths")
        .fieldNames()
        .forEachRemaining(
            path -> {
              assertThat(shapes.add(path.replaceAll("\\{[^}]*}", "{}"))).as(path).isTrue();
              assertThat(path).doesNotEndWith("/").doesNotContain("?");
            });
  }

  @Test
  void everyComponentIsUsedAndEveryReferenceLeadsSomewhere() {
    Set<String> used = new HashSet<>(document.findValuesAsText("$ref"));
    Set<String> present = new HashSet<>();
    document
        .path("components")
        .properties()
        .forEach(
            kind ->
                kind.getValue()
                    .fieldNames()
                    .forEachRemaining(
                        name -> present.add("#/components/" + kind.getKey() + "/" + name)));
    assertThat(used).isEqualTo(present);
  }

  @Test
  void everyNumberHasAUnitEveryListAndTextALengthAndEveryNumberSentItsBounds() {
    List<String> faults = new ArrayList<>();
    schemas(document, "", (where, schema) -> limits(where, schema, faults));
    document
        .at("/components/schemas")
        .properties()
        .forEach(
            schema -> {
              if (schema.getValue().has("additionalProperties")) {
                schemas(
                    schema.getValue(),
                    schema.getKey(),
                    (where, sent) -> bounds(where, sent, faults));
              }
            });
    assertThat(faults).isEmpty();
  }

  /** Generators of clients print bounds as literals of their language, which has no such number. */
  @Test
  void noBoundIsBeyondWhatEveryLanguageCanWrite() {
    List<String> wide = new ArrayList<>();
    schemas(
        document,
        "",
        (where, schema) -> {
          for (String bound : List.of("minimum", "maximum")) {
            if (Math.abs(schema.path(bound).asDouble()) > GREATEST_BOUND) {
              wide.add(where + " " + bound);
            }
          }
        });
    assertThat(wide).isEmpty();
    JsonNode formula = document.at("/components/schemas/FormulaAnswer/properties/value");
    assertThat(formula.has("minimum")).isFalse();
    assertThat(formula.has("maximum")).isFalse();
  }

  @Test
  void everyParameterOfTheQueryThatAPathTakesIsDeclared() {
    Map<String, Set<String>> declared = new TreeMap<>();
    operations(
        (where, operation) -> {
          Set<String> names = new TreeSet<>();
          operation
              .path("parameters")
              .forEach(
                  parameter -> {
                    if (parameter.path("in").asText().equals("query")) {
                      names.add(parameter.path("name").asText());
                    }
                  });
          declared.put(where, names);
        });
    assertThat(declared).containsEntry("post /v1/estimates/loop", Set.of("units", "working"));
    declared.forEach(
        (where, names) -> {
          String path = where.substring(where.indexOf('/')).replace("{id}", "x");
          assertThat(Surface.queriesOf(path)).as(where).isEqualTo(names);
        });
  }

  @Test
  void whatIsSentIsClosed() {
    for (String name : new String[] {"Plan", "TankDesign", "BedDesign", "FormulaRequest"}) {
      JsonNode schema = document.at("/components/schemas/" + name);
      assertThat(schema.path("additionalProperties").isBoolean()).as(name).isTrue();
      assertThat(schema.path("additionalProperties").asBoolean(true)).as(name).isFalse();
    }
    assertThat(document.at("/components/schemas/Plan/required").toString()).isEqualTo("[\"site\"]");
  }

  /** The bounds stand on the record of the engine and nowhere else. */
  @Test
  void aBoundOfARecordOfTheEngineIsInTheDocument() throws Exception {
    JsonNode volume = document.at("/components/schemas/TankDesign/properties/liquidVolumeM3");
    var quantity =
        org.marshlight.contract.RecordShape.of(org.marshlight.digester.TankDesign.class)
            .field("liquidVolumeM3")
            .orElseThrow()
            .quantity()
            .orElseThrow();
    assertThat(volume.path("minimum").asDouble()).isEqualTo(quantity.min());
    assertThat(volume.path("maximum").asDouble()).isEqualTo(quantity.max());
    assertThat(volume.path("x-unit").asText()).isEqualTo(quantity.unit());
    assertThat(volume.path("description").asText())
        .startsWith(quantity.meaning())
        .contains(quantity.usual());
    assertThat(document.at("/components/schemas/TankDesign/properties/shape/enum").toString())
        .isEqualTo("[\"rectangular\",\"cylindrical\"]");
  }

  @Test
  void theMethodsOfEveryPathAreThoseThatItAllows() {
    document
        .path("paths")
        .properties()
        .forEach(
            path -> {
              Response options = Service.asking().options(path.getKey().replace("{id}", "x"));
              Set<String> allowed =
                  new TreeSet<>(List.of(options.header("Allow").toLowerCase().split(", ")));
              allowed.removeAll(Set.of("head", "options"));
              Set<String> told = new TreeSet<>();
              path.getValue().fieldNames().forEachRemaining(told::add);
              told.retainAll(METHODS);
              assertThat(told).as(path.getKey()).isEqualTo(allowed);
            });
  }

  private void operations(BiConsumer<String, JsonNode> visitor) {
    for (var path : document.path("paths").properties()) {
      for (var entry : path.getValue().properties()) {
        if (METHODS.contains(entry.getKey())) {
          visitor.accept(entry.getKey() + " " + path.getKey(), entry.getValue());
        }
      }
    }
  }

  private static void schemas(JsonNode node, String at, BiConsumer<String, JsonNode> visitor) {
    if (node.has("type") && !at.endsWith("/properties") && !at.contains("/examples/")) {
      visitor.accept(at, node);
    }
    if (node.isArray()) {
      node.forEach(element -> schemas(element, at, visitor));
    }
    node.properties().forEach(e -> schemas(e.getValue(), at + "/" + e.getKey(), visitor));
  }

  private static void bounds(String where, JsonNode schema, List<String> faults) {
    boolean eachIdHasItsOwn = where.endsWith("/additionalProperties");
    if (isNumber(schema) && !eachIdHasItsOwn) {
      lacking(where, schema, faults, "minimum", "maximum");
    }
  }

  private static boolean isNumber(JsonNode schema) {
    String types = schema.path("type").toString();
    return types.contains("\"number\"") || types.contains("\"integer\"");
  }

  private static void limits(String where, JsonNode schema, List<String> faults) {
    String types = schema.path("type").toString();
    if (isNumber(schema)) {
      lacking(where, schema, faults, "x-unit");
    }
    if (types.contains("\"array\"")) {
      lacking(where, schema, faults, "maxItems");
    }
    if (types.contains("\"string\"") && !schema.has("enum")) {
      lacking(where, schema, faults, "maxLength");
    }
  }

  private static void lacking(String where, JsonNode schema, List<String> faults, String... names) {
    for (String name : names) {
      if (!schema.has(name)) {
        faults.add(where + " lacks " + name);
      }
    }
  }
}
