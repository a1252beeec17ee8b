package org.marshlight.json;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;

/** Hashes that do not hang on how a document was laid out. */
public final class CanonicalHash {

  private CanonicalHash() {}

  /**
   * SHA-256 of a document in the canonical form of RFC 8785, in hexadecimal.
   *
   * @param json a JSON object that was found well-formed, with finite numbers and no name twice
   */
  public static String sha256(String json) {
    return sha256(canonical(json));
  }

  /** SHA-256 of bytes as they are, in hexadecimal. */
  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  static byte[] canonical(String json) {
    try {
      return new JsonCanonicalizer(json).getEncodedUTF8();
    } catch (IOException e) {
      throw new IllegalArgumentException("not a checked document", e);
    }
  }
}
