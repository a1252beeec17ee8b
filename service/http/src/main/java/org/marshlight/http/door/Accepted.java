package org.marshlight.http.door;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Chooses the form of an answer by what a client accepts (RFC 9110, section 12.5.1). */
final class Accepted {

  private static final String EVERYTHING = "*/*";

  private Accepted() {}

  /**
   * The form that the client likes best; of several, the first.
   *
   * @param accept the Accept header; blank if the client does not care
   * @param forms what can be given
   */
  static Optional<String> best(String accept, List<String> forms) {
    String header = accept.isBlank() ? EVERYTHING : accept.toLowerCase(Locale.ROOT);
    String best = null;
    double liking = 0;
    for (String form : forms) {
      double quality = quality(header, form);
      if (quality > liking) {
        best = form;
        liking = quality;
      }
    }
    return Optional.ofNullable(best);
  }

  /** How much a form is liked: by the most exact of the ranges that it falls in. */
  private static double quality(String header, String form) {
    double quality = 0;
    int exactness = 0;
    for (String range : header.split(",")) {
      int fit = fit(range.split(";", 2)[0].trim(), form);
      if (fit > exactness) {
        exactness = fit;
        quality = weight(range);
      }
    }
    return quality;
  }

  private static int fit(String range, String form) {
    if (range.equals(form)) {
      return 3;
    }
    if (range.equals(form.substring(0, form.indexOf('/')) + "/*")) {
      return 2;
    }
    return range.equals(EVERYTHING) ? 1 : 0;
  }

  private static double weight(String range) {
    for (String parameter : range.split(";")) {
      String[] pair = parameter.trim().split("=", 2);
      if (pair.length == 2 && pair[0].trim().equals("q")) {
        return number(pair[1].trim());
      }
    }
    return 1;
  }

  private static double number(String weight) {
    try {
      return Math.min(1, Double.parseDouble(weight));
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
