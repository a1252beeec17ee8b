package org.marshlight.http.words;

import io.quarkus.qute.RawString;

/**
 * A text with the language that it is in, where that is not the language of the page.
 *
 * @param text the text
 * @param otherLanguage tag of its language; null if it is that of the page
 */
public record Said(String text, String otherLanguage) {

  /** The text as markup, its language marked where it differs. */
  public RawString html() {
    String escaped = escaped(text);
    return new RawString(
        otherLanguage == null
            ? escaped
            : "<span lang=\"" + otherLanguage + "\">" + escaped + "</span>");
  }

  /** A text that no browser takes for markup. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }
}
