package org.marshlight.http.report;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Collectors;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;

/** How values, units and names are printed for people. */
final class Words {

  static final String NONE = "\u2013";

  private static final Map<String, String> UNITS =
      Map.of("1", "", "Cel", "\u00b0C", "a", "years", "d", "days", "deg", "\u00b0");

  private Words() {}

  /** A value as people write it: three significant digits, a dash for none. */
  static String value(Object value) {
    if (value == null) {
      return NONE;
    }
    if (value instanceof Integer) {
      return value.toString();
    }
    if (value instanceof Number number) {
      return Sentences.number(number.doubleValue());
    }
    if (value instanceof Enum<?> choice) {
      return spaced(WireName.of(choice));
    }
    if (value instanceof Boolean truth) {
      return truth ? "yes" : "no";
    }
    if (value instanceof Collection<?> list) {
      return list.stream().map(Words::value).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> entry.getKey() + " = " + value(entry.getValue()))
          .collect(Collectors.joining(", "));
    }
    return value.toString();
  }

  /** A UCUM code as people write it. */
  static String unit(String ucum) {
    return UNITS.getOrDefault(
        ucum, ucum.replace("Cel", "\u00b0C").replace("kW.h", "kWh").replaceAll("[{}]", ""));
  }

  /** A meaning as a label: without its full stop. */
  static String label(String meaning) {
    return meaning.endsWith(".") ? meaning.substring(0, meaning.length() - 1) : meaning;
  }

  /** A name in camel case or with hyphens as words. */
  static String spaced(String name) {
    return name.replace('-', ' ')
        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
        .toLowerCase(java.util.Locale.ROOT);
  }
}
