package org.marshlight.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;

/**
 * Builds the tree of a document token by token, so that a name given twice is found where it
 * stands. NaN and infinities pass here and are refused later, under the pointer of their field.
 */
final class TreeParser {

  private static final int DEEPEST = 32;
  private static final int LONGEST_NAME = 128;
  private static final int LONGEST_NUMBER = 100;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNameLength(LONGEST_NAME)
                  .maxNumberLength(LONGEST_NUMBER)
                  .build())
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .build();

  private final JsonParser parser;
  private final CharsetEncoder encoder = StandardCharsets.UTF_8.newEncoder();
  private final List<Fault> repeated = new ArrayList<>();

  private TreeParser(JsonParser parser) {
    this.parser = parser;
  }

  static JsonDocument parse(String text) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      TreeParser builder = new TreeParser(parser);
      JsonNode tree = builder.document();
      builder.nothingMore();
      return new JsonDocument(text, tree, builder.repeated);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonNode document() throws IOException {
    try {
      parser.nextToken();
      return value(Pointer.ROOT);
    } catch (StreamConstraintsException e) {
      throw new MalformedJson(
          "json.over-limit", "depth", DEEPEST, "name", LONGEST_NAME, "number", LONGEST_NUMBER);
    } catch (JsonProcessingException e) {
      throw at("json.malformed", e.getLocation());
    }
  }

  private void nothingMore() throws IOException {
    boolean more;
    try {
      more = parser.nextToken() != null;
    } catch (JsonProcessingException e) {
      more = true;
    }
    if (more) {
      throw at("json.trailing-text", parser.currentLocation());
    }
  }

  private JsonNode value(String pointer) throws IOException {
    JsonNodeFactory nodes = JsonNodeFactory.instance;
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(pointer);
      case START_ARRAY -> list(pointer);
      case VALUE_STRING -> nodes.textNode(wellFormed(parser.getText()));
      case VALUE_NUMBER_INT -> nodes.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> nodes.booleanNode(true);
      case VALUE_FALSE -> nodes.booleanNode(false);
      case VALUE_NULL -> nodes.nullNode();
      default -> throw at("json.malformed", parser.currentLocation());
    };
  }

  private JsonNode object(String pointer) throws IOException {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = wellFormed(parser.currentName());
      String at = Pointer.child(pointer, name);
      parser.nextToken();
      JsonNode value = value(at);
      if (object.has(name)) {
        repeated.add(Fault.of("json.repeated-name", at, null, "each name once"));
      } else {
        object.set(name, value);
      }
    }
    return object;
  }

  private JsonNode list(String pointer) throws IOException {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(value(Pointer.child(pointer, list.size())));
    }
    return list;
  }

  /** Half of a surrogate pair is no text: it has no UTF-8 form and so no hash and no echo. */
  private String wellFormed(String text) {
    if (!encoder.canEncode(text)) {
      throw at("json.lone-surrogate", parser.currentLocation());
    }
    return text;
  }

  private static MalformedJson at(String code, JsonLocation location) {
    return new MalformedJson(code, "line", location.getLineNr(), "column", location.getColumnNr());
  }
}
