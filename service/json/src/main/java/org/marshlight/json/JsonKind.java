package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;

/** The kinds of JSON value, in words. */
enum JsonKind {
  OBJECT("an object"),
  LIST("a list"),
  TEXT("a text"),
  NUMBER("a number"),
  TRUTH("true or false"),
  NULL("null");

  private final String words;

  JsonKind(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  static JsonKind of(JsonNode node) {
    return switch (node.getNodeType()) {
      case OBJECT -> OBJECT;
      case ARRAY -> LIST;
      case STRING -> TEXT;
      case NUMBER -> NUMBER;
      case BOOLEAN -> TRUTH;
      default -> NULL;
    };
  }
}
