package org.marshlight.http.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The languages in which pages can be read: those that some {@code languages.properties} beside
 * this class names. A language is named once somebody who does this work in it has read its texts.
 */
public final class Language {

  /** The language in which every text exists. */
  public static final Locale COMPLETE = Locale.ENGLISH;

  private static final String LIST = "org/marshlight/http/words/languages.properties";
  private static final List<Locale> ALL = read();

  /** A language range with its weight (RFC 9110, section 12.5.4; RFC 4647, section 2.1). */
  private static final Pattern RANGE =
      Pattern.compile(
          "(\\*|[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*)"
              + "(\\s*;\\s*[qQ]=(0(\\.[0-9]{0,3})?|1(\\.0{0,3})?))?");

  private Language() {}

  /**
   * The language that a reader likes best (RFC 4647, lookup); English if there is none. What is no
   * language range is passed over.
   *
   * @param acceptLanguage the Accept-Language header; null or blank if the reader does not care
   */
  public static Locale best(String acceptLanguage) {
    if (acceptLanguage == null || acceptLanguage.isBlank()) {
      return COMPLETE;
    }
    String ranges =
        Arrays.stream(acceptLanguage.split(","))
            .map(String::trim)
            .filter(range -> RANGE.matcher(range).matches())
            .collect(Collectors.joining(","));
    Locale best = ranges.isEmpty() ? null : Locale.lookup(Locale.LanguageRange.parse(ranges), ALL);
    return best == null ? COMPLETE : best;
  }

  private static List<Locale> read() {
    TreeSet<String> tags = new TreeSet<>();
    try {
      Enumeration<URL> lists = Language.class.getClassLoader().getResources(LIST);
      while (lists.hasMoreElements()) {
        Properties list = new Properties();
        try (InputStream stream = lists.nextElement().openStream()) {
          list.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        }
        tags.addAll(list.stringPropertyNames());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<Locale> languages = new ArrayList<>();
    tags.forEach(tag -> languages.add(Locale.forLanguageTag(tag)));
    return List.copyOf(languages);
  }
}
