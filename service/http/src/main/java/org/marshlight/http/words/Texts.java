package org.marshlight.http.words;

import io.quarkus.qute.RawString;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.text.StringSubstitutor;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Sentences;
import org.marshlight.safety.Caution;

/**
 * The texts of pages and reports in one language. What a translation lacks is said in English and
 * marked as English, cautions above all: a caution half understood is worse than one in another
 * language.
 */
public final class Texts {

  private static final Map<Locale, Texts> LOADED = new ConcurrentHashMap<>();

  private final Locale language;
  private final Properties own;
  private final Properties english;

  private Texts(Locale language, Properties own, Properties english) {
    this.language = language;
    this.own = own;
    this.english = english;
  }

  /** The texts of a language. */
  public static Texts in(Locale language) {
    return LOADED.computeIfAbsent(
        language,
        l -> new Texts(l, l.equals(Language.COMPLETE) ? load("") : load("_" + l), load("")));
  }

  /** Tag of the language. */
  public String tag() {
    return language.toLanguageTag();
  }

  /** Whether there is a text under a key. */
  public boolean has(String key) {
    return english.containsKey(key);
  }

  /** The keys that begin alike. */
  public List<String> keys(String beginning) {
    return english.stringPropertyNames().stream()
        .filter(key -> key.startsWith(beginning))
        .sorted()
        .toList();
  }

  /**
   * A text as it is, for titles and attributes.
   *
   * @throws IllegalArgumentException if there is none
   */
  public String plain(String key) {
    return said(key).text();
  }

  /** A text with numbers or names set into its places. */
  public String plain(String key, Map<String, ?> places) {
    return filled(plain(key), places);
  }

  /** A text as markup. */
  public RawString html(String key) {
    return said(key).html();
  }

  /** A text as markup with numbers or names set into its places. */
  public RawString html(String key, Map<String, ?> places) {
    return said(key, places).html();
  }

  /** A text with the language that it is in. */
  public Said said(String key) {
    String text = own.getProperty(key);
    if (text != null) {
      return new Said(text, null);
    }
    text = english.getProperty(key);
    if (text == null) {
      throw new IllegalArgumentException("no text for " + key);
    }
    return inEnglish(text);
  }

  /** The same with numbers or names set into its places. */
  public Said said(String key, Map<String, ?> places) {
    Said said = said(key);
    return new Said(filled(said.text(), places), said.otherLanguage());
  }

  /** A remark of the engine. */
  public Said notice(Notice notice) {
    return coded(notice.code(), notice.params(), notice.text());
  }

  /** A coded sentence of the engine, translated if its package has it in this language. */
  public Said coded(String code, Map<String, Object> params, String text) {
    return translated(code, params).orElseGet(() -> inEnglish(text));
  }

  /** What a caution warns of. */
  public Said hazard(Caution caution) {
    return coded("safety." + caution.id() + ".hazard", Map.of(), caution.hazard());
  }

  /** What a caution says. */
  public Said caution(Caution caution) {
    return coded("safety." + caution.id(), caution.params(), caution.text());
  }

  private Optional<Said> translated(String code, Map<String, Object> params) {
    return language.equals(Language.COMPLETE)
        ? Optional.empty()
        : Sentences.translated(code, params, language).map(text -> new Said(text, null));
  }

  private Said inEnglish(String text) {
    return new Said(
        text, language.equals(Language.COMPLETE) ? null : Language.COMPLETE.toLanguageTag());
  }

  private static String filled(String text, Map<String, ?> places) {
    return new StringSubstitutor(places, "{", "}")
        .setEnableUndefinedVariableException(true)
        .setDisableSubstitutionInValues(true)
        .replace(text);
  }

  private static Properties load(String suffix) {
    Properties texts = new Properties();
    for (String part : new String[] {"texts", "fields"}) {
      try (InputStream stream = Texts.class.getResourceAsStream(part + suffix + ".properties")) {
        if (stream != null) {
          texts.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return texts;
  }
}
