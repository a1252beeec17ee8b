package org.marshlight.http.query;

import org.marshlight.http.problems.Refusal;

/** A parameter of the query that is true or false. */
public final class Flag {

  private Flag() {}

  /**
   * Reads a flag.
   *
   * @param name name of the parameter
   * @param value what was sent; null if nothing was
   * @param usual what holds where nothing was sent
   * @throws Refusal if it is neither {@code true} nor {@code false}
   */
  public static boolean of(String name, String value, boolean usual) {
    if (value == null) {
      return usual;
    }
    return switch (value) {
      case "true" -> true;
      case "false" -> false;
      default -> throw Refusal.query(name, value, "true or false");
    };
  }
}
