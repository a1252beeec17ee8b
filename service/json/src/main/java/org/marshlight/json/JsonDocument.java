package org.marshlight.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.marshlight.contract.Fault;

/**
 * A document as sent, before it is held to the record it should be.
 *
 * @param text the document
 * @param tree what it says; of a name given twice, the first value
 * @param repeated a fault for each name that is given twice in one object
 */
public record JsonDocument(String text, JsonNode tree, List<Fault> repeated) {

  public JsonDocument {
    repeated = List.copyOf(repeated);
  }

  /**
   * Parses a body.
   *
   * @param body bytes in UTF-8
   * @throws MalformedJson if they are not one JSON document within the limits of reading
   */
  public static JsonDocument parse(byte[] body) {
    String text = decode(body);
    if (text.isBlank()) {
      throw new MalformedJson("json.empty");
    }
    return TreeParser.parse(text);
  }

  private static String decode(byte[] body) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
    } catch (CharacterCodingException e) {
      throw new MalformedJson("json.not-utf-8");
    }
  }
}
