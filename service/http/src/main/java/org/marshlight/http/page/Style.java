package org.marshlight.http.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style sheet that stands inside every page, so that a page saved to a file keeps its looks,
 * and the hash under which a browser is told to accept it and no other.
 */
public final class Style {

  /** The sheet. */
  public static final String SHEET = read();

  /** What a content security policy says of the sheet. */
  public static final String POLICY_SOURCE = "'sha256-" + hash(SHEET) + "'";

  private Style() {}

  private static String read() {
    try (InputStream stream = Style.class.getResourceAsStream("style.css")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(String sheet) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(sheet.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
