package org.marshlight.http.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;

/** How values, units and names are printed for people. */
final class Words {

  static final String NONE = "\u2013";

  private static final double LEAST_WITHOUT_EXPONENT = 1e-6;

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
      return number(number.doubleValue());
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

  private static String number(double value) {
    return value != 0 && Math.abs(value) < LEAST_WITHOUT_EXPONENT
        ? new BigDecimal(value).round(new MathContext(3)).toString()
        : Sentences.number(value);
  }

  /** A UCUM code as people write it. */
  static String unit(String ucum) {
    return UNITS.getOrDefault(
        ucum,
        ucum.replace("Cel", "\u00b0C")
            .replace("kW.h", "kWh")
            .replaceAll("m2\\b", "m\u00b2")
            .replaceAll("m3\\b", "m\u00b3")
            .replaceAll("[{}]", ""));
  }

  /** A meaning as a label: without its full stop and without what it says to programs of null. */
  static String label(String meaning) {
    return meaning.replaceAll("([;,] null [^;]*)?\\.?$", "");
  }

  /** A name in camel case or with hyphens as words. */
  static String spaced(String name) {
    return name.replace('-', ' ').replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
