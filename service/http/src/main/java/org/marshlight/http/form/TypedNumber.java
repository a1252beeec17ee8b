package org.marshlight.http.form;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Numbers as people type them. A single comma is a decimal comma, unless it could also separate
 * thousands; spaces may separate groups of three digits. The page's scripts read numbers by the
 * same rules.
 */
final class TypedNumber {

  private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)(e[+-]?\\d+)?");
  private static final Pattern SPACED =
      Pattern.compile("[+-]?\\d{1,3}([ \u00a0\u202f]\\d{3})+([.,]\\d+)?");
  private static final Pattern AMBIGUOUS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

  private TypedNumber() {}

  /** The number that a text is; empty if it is none, or could be either of two. */
  static OptionalDouble of(String text) {
    String typed = text.trim().replace('\u2212', '-');
    boolean spaced = SPACED.matcher(typed).matches();
    if (!spaced && isAmbiguous(typed)) {
      return OptionalDouble.empty();
    }
    String plain = spaced ? typed.replaceAll("[ \u00a0\u202f]", "") : typed;
    String point =
        plain.replaceFirst("^([^.,]*),([^.,]*)$", "$1.$2").toLowerCase(java.util.Locale.ROOT);
    return NUMBER.matcher(point).matches()
        ? OptionalDouble.of(Double.parseDouble(point))
        : OptionalDouble.empty();
  }

  /** Whether the comma of a text can be a decimal comma as well as a separator of thousands. */
  static boolean isAmbiguous(String text) {
    return AMBIGUOUS.matcher(text.trim()).matches();
  }
}
