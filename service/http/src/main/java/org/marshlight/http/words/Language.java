package org.marshlight.http.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;

/**
 * The languages in which pages can be read: those that some {@code languages.properties} beside
 * this class names. A language is named once somebody who does this work in it has read its texts.
 */
public final class Language {

  /** The language in which every text exists. */
  public static final Locale COMPLETE = Locale.ENGLISH;

  private static final String LIST = "org/marshlight/http/words/languages.properties";
  private static final List<Locale> ALL = read();

  private Language() {}

  /**
   * The language that a reader likes best (RFC 4647, lookup); English if there is none.
   *
   * @param acceptLanguage the Accept-Language header; null or blank if the reader does not care
   */
  public static Locale best(String acceptLanguage) {
    if (acceptLanguage == null || acceptLanguage.isBlank()) {
      return COMPLETE;
    }
    try {
      Locale best = Locale.lookup(Locale.LanguageRange.parse(acceptLanguage), ALL);
      return best == null ? COMPLETE : best;
    } catch (IllegalArgumentException e) {
      return COMPLETE;
    }
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
