package org.marshlight.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.text.StringSubstitutor;

/**
 * Texts of coded messages. A code is {@code <package>.<name>}; its text stands in that package's
 * {@code sentences.properties} with places such as <code>{month}</code> for its parameters, so that
 * a text never holds a number that its parameters do not.
 */
public final class Sentences {

  private static final MathContext THREE_DIGITS = new MathContext(3);

  /** The parameter that holds a UCUM code; people are not shown the code 1, nor Cel. */
  private static final String UNIT = "unit";

  private static final double EXACT_BELOW = 1e6;
  private static final Map<String, Properties> BY_PLACE = new ConcurrentHashMap<>();

  private Sentences() {}

  /**
   * The text of a code with its parameters set in; numbers are rounded as {@link #number} says.
   *
   * @throws IllegalArgumentException if there is no such code or a place has no parameter
   */
  public static String text(String code, Map<String, Object> params) {
    String template = properties(code.substring(0, code.indexOf('.'))).getProperty(code);
    if (template == null) {
      throw new IllegalArgumentException("no sentence for " + code);
    }
    return filled(template, params);
  }

  /**
   * The text of a code in another language, from the package's {@code sentences_<language>}; empty
   * if that has none or lacks a parameter that it names.
   *
   * @param language the language
   */
  public static Optional<String> translated(
      String code, Map<String, Object> params, Locale language) {
    String place = code.substring(0, code.indexOf('.')) + "/sentences_" + language;
    String template = BY_PLACE.computeIfAbsent(place, Sentences::find).getProperty(code);
    try {
      return Optional.ofNullable(template).map(text -> filled(text, params));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static String filled(String template, Map<String, Object> params) {
    Map<String, String> printed = new LinkedHashMap<>();
    params.forEach((name, value) -> printed.put(name, printed(value)));
    printed.computeIfPresent(UNIT, (name, code) -> code.equals("Cel") ? "°C" : code);
    boolean dimensionless = "1".equals(params.get(UNIT));
    return new StringSubstitutor(printed, "{", "}")
        .setEnableUndefinedVariableException(true)
        .setDisableSubstitutionInValues(true)
        .replace(dimensionless ? template.replace(" {" + UNIT + "}", "") : template);
  }

  /**
   * A number as a sentence prints it, without exponent: three significant digits at most, but a
   * whole number below a million as it is, for it may be a bound.
   *
   * @throws IllegalArgumentException if the number is not finite
   */
  public static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no sentence prints " + value);
    }
    if (value == Math.rint(value) && Math.abs(value) < EXACT_BELOW) {
      return String.valueOf((long) value);
    }
    BigDecimal rounded = new BigDecimal(value).round(THREE_DIGITS);
    return rounded.scale() <= 0
        ? rounded.toPlainString()
        : rounded.stripTrailingZeros().toPlainString();
  }

  private static String printed(Object value) {
    if (value instanceof Integer || value instanceof Long) {
      return value.toString();
    }
    return value instanceof Number n ? number(n.doubleValue()) : String.valueOf(value);
  }

  private static Properties properties(String packageName) {
    Properties properties = BY_PLACE.computeIfAbsent(packageName + "/sentences", Sentences::find);
    if (properties.isEmpty()) {
      throw new IllegalArgumentException("no sentences of " + packageName);
    }
    return properties;
  }

  /** The sentences at a place; none if there is nothing. */
  private static Properties find(String place) {
    Properties properties = new Properties();
    try (InputStream stream =
        Sentences.class.getResourceAsStream("/org/marshlight/" + place + ".properties")) {
      if (stream == null) {
        return properties;
      }
      Reader reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
      properties.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties;
  }
}
