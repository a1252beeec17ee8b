package org.marshlight.http.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;

/**
 * How values, units and names are printed for people.
 *
 * @param system system of units
 */
public record Words(UnitSystem system) {

  /** What stands where there is no value. */
  public static final String NONE = "\u2013";

  private static final double LEAST_WITHOUT_EXPONENT = 1e-6;

  /** A figure that others cancel out leaves a rest of this size, which is none. */
  private static final double ROUNDING_REST = 1e-9;

  private static final Pattern SQUARE = Pattern.compile("\\bm2\\b");
  private static final Pattern CUBE = Pattern.compile("\\bm3\\b");
  private static final Pattern DEGREES = Pattern.compile("(?<=[0-9] )Cel\\b");

  /**
   * A number with its unit.
   *
   * @param value the number; null for none
   * @param ucum UCUM code
   * @param place where it stands
   */
  public String quantity(Double value, String ucum, String place) {
    String unit = unit(ucum, place);
    String number = number(value, ucum, place);
    return unit.isEmpty() || number.equals(NONE) ? number : number + "\u00a0" + unit;
  }

  /** A number in the unit that its reader uses. */
  public String number(Double value, String ucum, String place) {
    return value == null ? NONE : digits(UnitBook.of(ucum, place, system).of(value));
  }

  /** The unit of a number as people write it. */
  public String unit(String ucum, String place) {
    return UnitBook.of(ucum, place, system).printed();
  }

  /** A value of any kind, numbers in a unit: three significant digits, a dash for none. */
  public String value(Object value, String ucum, String place) {
    if (value instanceof Integer || value instanceof Long) {
      Unit unit = UnitBook.of(ucum, place, system);
      return unit.unchanged() ? value.toString() : digits(unit.of(((Number) value).doubleValue()));
    }
    if (value instanceof Number number) {
      return number(number.doubleValue(), ucum, place);
    }
    if (value instanceof Collection<?> list) {
      return list.stream().map(v -> value(v, ucum, place)).collect(Collectors.joining(", "));
    }
    return text(value);
  }

  /** A value that has no unit. */
  public static String text(Object value) {
    if (value == null) {
      return NONE;
    }
    if (value instanceof Integer) {
      return value.toString();
    }
    if (value instanceof Number number) {
      return digits(number.doubleValue());
    }
    if (value instanceof Enum<?> choice) {
      return spaced(WireName.of(choice));
    }
    if (value instanceof Boolean truth) {
      return truth ? "yes" : "no";
    }
    if (value instanceof Collection<?> list) {
      return list.stream().map(Words::text).collect(Collectors.joining(", "));
    }
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> entry.getKey() + " = " + text(entry.getValue()))
          .collect(Collectors.joining(", "));
    }
    return value.toString();
  }

  /** Three significant digits; an exponent only for what is very small. */
  public static String digits(double value) {
    if (Double.isNaN(value)) {
      return NONE;
    }
    if (Math.abs(value) < ROUNDING_REST) {
      return "0";
    }
    String text =
        Math.abs(value) < LEAST_WITHOUT_EXPONENT
            ? new BigDecimal(value).round(new MathContext(3)).toString()
            : Sentences.number(value);
    return grouped(text).replace('-', '\u2212');
  }

  /** Digits before the point in groups of three, from five digits on. */
  private static String grouped(String number) {
    int point = number.indexOf('.');
    int end = point < 0 ? number.length() : point;
    int start = number.startsWith("-") ? 1 : 0;
    if (end - start < 5 || number.contains("E")) {
      return number;
    }
    StringBuilder text = new StringBuilder(number);
    for (int i = end - 3; i > start; i -= 3) {
      text.insert(i, '\u202f');
    }
    return text.toString();
  }

  /** A sentence of the engine with its units as people write them. */
  public static String sentence(String text) {
    String written = SQUARE.matcher(text).replaceAll("m\u00b2");
    written = CUBE.matcher(written).replaceAll("m\u00b3");
    return DEGREES.matcher(written).replaceAll("\u00b0C");
  }

  /** A meaning as a label: without its full stop and without what it says to programs of null. */
  public static String label(String meaning) {
    return sentence(meaning.replaceAll("([;,] null [^;]*)?\\.?$", ""));
  }

  /** A name in camel case or with hyphens as words. */
  public static String spaced(String name) {
    return name.replace('-', ' ').replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
