package org.marshlight.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The schemas of the OpenAPI document as an independent validator of JSON Schema 2020-12 reads
 * them. Objects are closed here: clients are to accept fields that they do not know, but the
 * service may send none that the document does not have. What fits the closed schema fits the
 * published one too.
 */
final class PublishedSchemas {

  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  private final JsonNode document;
  private final JsonNode components;
  private final Map<JsonNode, JsonSchema> read = new HashMap<>();

  PublishedSchemas(JsonNode document) {
    this.document = document;
    components = document.path("components").deepCopy();
    close(components.path("schemas"));
  }

  /** Where a value is not what a schema of the document says; empty if it fits. */
  List<String> violations(JsonNode schema, JsonNode value) {
    return violations(compiled(schema), value);
  }

  /** The same for a schema that was compiled before; safe for use by several threads. */
  static List<String> violations(JsonSchema schema, JsonNode value) {
    return schema.validate(value).stream().map(ValidationMessage::toString).toList();
  }

  JsonSchema compiled(JsonNode schema) {
    return read.computeIfAbsent(schema, this::schema);
  }

  /** A node of the document, or what its reference leads to. */
  JsonNode resolved(JsonNode node) {
    return node.has("$ref") ? document.at(node.path("$ref").asText().substring(1)) : node;
  }

  private JsonSchema schema(JsonNode schema) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.setAll((ObjectNode) schema);
    root.set("components", components);
    return FACTORY.getSchema(root);
  }

  private static void close(JsonNode node) {
    if (node instanceof ObjectNode object
        && object.path("properties").isObject()
        && object.has("type")
        && !object.has("additionalProperties")) {
      object.put("additionalProperties", false);
    }
    node.forEach(PublishedSchemas::close);
  }
}
