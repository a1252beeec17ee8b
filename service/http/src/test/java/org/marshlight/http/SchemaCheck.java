package org.marshlight.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Holds JSON to those words of JSON Schema that the OpenAPI document uses. */
final class SchemaCheck {

  private final JsonNode document;

  SchemaCheck(JsonNode document) {
    this.document = document;
  }

  /** Where a value is not what a schema says. */
  List<String> faults(JsonNode schema, JsonNode value) {
    List<String> faults = new ArrayList<>();
    check(schema, value, "", faults);
    return faults;
  }

  /** A node, or what its reference leads to. */
  JsonNode resolved(JsonNode node) {
    return node.has("$ref") ? document.at(node.path("$ref").asText().substring(1)) : node;
  }

  private void check(JsonNode reference, JsonNode value, String at, List<String> faults) {
    JsonNode schema = resolved(reference);
    if (schema.has("anyOf")) {
      boolean fits = false;
      for (JsonNode choice : schema.path("anyOf")) {
        fits |= faults(choice, value).isEmpty();
      }
      if (!fits) {
        faults.add(at + " is none of the choices: " + faults(schema.path("anyOf").get(0), value));
      }
      return;
    }
    if (schema.isEmpty()) {
      return;
    }
    if (!hasType(schema.path("type"), value)) {
      faults.add(at + " is no " + schema.path("type") + " but " + value);
    } else if (value.isObject()) {
      object(schema, value, at, faults);
    } else if (value.isArray()) {
      list(schema, value, at, faults);
    } else {
      single(schema, value, at, faults);
    }
  }

  private void object(JsonNode schema, JsonNode value, String at, List<String> faults) {
    for (JsonNode name : schema.path("required")) {
      if (!value.has(name.asText())) {
        faults.add(at + " lacks " + name);
      }
    }
    for (var field : value.properties()) {
      String place = at + "/" + field.getKey();
      JsonNode known = schema.path("properties").path(field.getKey());
      JsonNode others = schema.path("additionalProperties");
      if (!known.isMissingNode()) {
        check(known, field.getValue(), place, faults);
      } else if (others.isObject()) {
        check(others, field.getValue(), place, faults);
      } else {
        faults.add(place + " is not in the document");
      }
    }
  }

  private void list(JsonNode schema, JsonNode value, String at, List<String> faults) {
    if (value.size() < schema.path("minItems").asInt(0)
        || value.size() > schema.path("maxItems").asInt(0)) {
      faults.add(at + " has " + value.size() + " entries");
    }
    for (int i = 0; i < value.size(); i++) {
      check(schema.path("items"), value.get(i), at + "/" + i, faults);
    }
  }

  private static void single(JsonNode schema, JsonNode value, String at, List<String> faults) {
    if (value.isNumber()
        && (value.asDouble() < schema.path("minimum").asDouble()
            || value.asDouble() > schema.path("maximum").asDouble())) {
      faults.add(at + " is out of bounds: " + value);
    }
    if (value.isTextual() && schema.has("enum")) {
      boolean known = false;
      for (JsonNode choice : schema.path("enum")) {
        known |= choice.equals(value);
      }
      if (!known) {
        faults.add(at + " is no choice: " + value);
      }
    } else if (value.isTextual() && value.asText().length() > schema.path("maxLength").asInt()) {
      faults.add(at + " is too long: " + value.asText().length());
    }
  }

  private static boolean hasType(JsonNode types, JsonNode value) {
    if (types.isTextual()) {
      return isA(types.asText(), value);
    }
    for (JsonNode type : types) {
      if (isA(type.asText(), value)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isA(String type, JsonNode value) {
    return switch (type) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isTextual();
      case "number" -> value.isNumber();
      case "integer" -> value.isIntegralNumber();
      case "boolean" -> value.isBoolean();
      default -> value.isNull();
    };
  }
}
