package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Applies merge patches (RFC 7396). */
final class MergePatch {

  private MergePatch() {}

  /**
   * A patched copy. Objects are merged name by name, null takes a name away, and anything else
   * takes the place of what was there, lists as a whole.
   *
   * @param target what is patched; left as it is
   * @param patch the patch
   */
  static JsonNode apply(JsonNode target, JsonNode patch) {
    if (!patch.isObject()) {
      return patch.deepCopy();
    }
    ObjectNode patched =
        target != null && target.isObject()
            ? target.deepCopy()
            : JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> entry : patch.properties()) {
      if (entry.getValue().isNull()) {
        patched.remove(entry.getKey());
      } else {
        patched.set(entry.getKey(), apply(patched.get(entry.getKey()), entry.getValue()));
      }
    }
    return patched;
  }
}
