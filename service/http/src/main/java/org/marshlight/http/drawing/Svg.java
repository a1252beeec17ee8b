package org.marshlight.http.drawing;

import java.util.Locale;
import org.marshlight.http.words.Said;

/** Writes SVG elements. */
final class Svg {

  private final StringBuilder markup = new StringBuilder();

  /** Starts a drawing that is described by its figure's caption and table. */
  Svg(String name, double width, double height, String alternative) {
    markup.append(
        String.format(
            Locale.ROOT,
            "<svg class=\"chart\" viewBox=\"0 0 %s %s\" role=\"img\" aria-label=\"%s\""
                + " data-chart=\"%s\">",
            number(width),
            number(height),
            Said.escaped(alternative),
            Said.escaped(name)));
  }

  /** An element without content; attributes are name, value, name, value. */
  Svg element(String name, Object... attributes) {
    open(name, attributes);
    markup.insert(markup.length() - 1, '/');
    return this;
  }

  /** An element that says what it is when it is pointed at. */
  Svg titled(String title, String name, Object... attributes) {
    open(name, attributes);
    markup.append("<title>").append(Said.escaped(title)).append("</title></").append(name);
    markup.append('>');
    return this;
  }

  Svg text(String content, Object... attributes) {
    open("text", attributes);
    markup.append(Said.escaped(content)).append("</text>");
    return this;
  }

  Svg group(Object... attributes) {
    return open("g", attributes);
  }

  Svg endGroup() {
    markup.append("</g>");
    return this;
  }

  /** The hatchings that areas of this drawing are filled with. */
  Svg hatchings(String drawing) {
    markup.append("<defs>");
    for (Hatching hatching : Hatching.values()) {
      markup.append(hatching.definition(drawing));
    }
    markup.append("</defs>");
    return this;
  }

  /** The whole drawing. */
  String end() {
    return markup.append("</svg>").toString();
  }

  private Svg open(String name, Object... attributes) {
    markup.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      Object value = attributes[i + 1];
      String text = value instanceof Number n ? number(n.doubleValue()) : String.valueOf(value);
      markup.append(' ').append(attributes[i]).append("=\"").append(Said.escaped(text)).append('"');
    }
    markup.append('>');
    return this;
  }

  /** A length to a tenth, without a needless fraction. */
  static String number(double value) {
    double tenths = Math.rint(value * 10) / 10;
    return tenths == Math.rint(tenths)
        ? String.valueOf((long) tenths)
        : String.format(Locale.ROOT, "%.1f", tenths);
  }
}
