package org.marshlight.http.fuzz;

import java.net.URI;
import java.net.http.HttpRequest;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A request made at random.
 *
 * @param seed seed that makes the same request again
 * @param path path with its query
 * @param contentType media type of the body
 * @param accept media type asked for
 * @param body the body as sent
 */
record FuzzRequest(long seed, String path, String contentType, String accept, byte[] body) {

  HttpRequest to(URI service) {
    return HttpRequest.newBuilder(service.resolve(path))
        .header("Content-Type", contentType)
        .header("Accept", accept)
        .POST(HttpRequest.BodyPublishers.ofByteArray(body))
        .build();
  }

  /** The request as a command of a shell, for a service on its usual port. */
  String curl() {
    String send =
        "curl -i -H 'Content-Type: %s' -H 'Accept: %s' --data-binary @- 'http://localhost:8080%s'"
            .formatted(contentType, accept, path);
    String text = plainText();
    return text == null
        ? "echo '%s' | base64 -d | %s".formatted(Base64.getEncoder().encodeToString(body), send)
        : "printf '%%s' '%s' | %s".formatted(text.replace("'", "'\\''"), send);
  }

  /** The body as text that a shell can hold; null if it is none. */
  private String plainText() {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
      return text.chars().allMatch(c -> c >= ' ' || c == '\n') ? text : null;
    } catch (CharacterCodingException e) {
      return null;
    }
  }
}
