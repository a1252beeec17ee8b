package org.marshlight.http.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.marshlight.http.words.Words;

/**
 * A chart of twelve months.
 *
 * @param name name that is unique on its page
 * @param alternative what a reader is told who cannot see it
 * @param unit unit of the values as people write it
 * @param months short names of the months
 * @param series what is drawn
 * @param powers whether the scale is one of powers of ten
 */
public record MonthChart(
    String name,
    String alternative,
    String unit,
    List<String> months,
    List<Series> series,
    boolean powers) {

  private static final double WIDTH = 460;
  private static final double HEIGHT = 250;
  private static final double LEFT = 56;
  private static final double RIGHT = 8;
  private static final double TOP = 22;
  private static final double BOTTOM = 24;
  private static final double STEP = (WIDTH - LEFT - RIGHT) / 12;
  private static final double BAR = 0.62;
  private static final double LEAST_POWER = 1e-3;

  /** The drawing. */
  public String svg() {
    Scale scale = scale();
    Svg svg = new Svg(name, WIDTH, HEIGHT, alternative).hatchings(name);
    axes(svg, scale);
    bars(svg, scale);
    int line = 0;
    int limit = 0;
    for (Series drawn : series) {
      if (drawn.kind() == Series.Kind.LINE) {
        line(svg, scale, drawn, line++);
      } else if (drawn.kind() == Series.Kind.LIMIT) {
        limit(svg, scale, drawn, limit++);
      }
    }
    return svg.end();
  }

  /** What its lines and bars mean, each with a swatch. */
  public List<KeyEntry> key() {
    List<KeyEntry> key = new ArrayList<>();
    int line = 0;
    int limit = 0;
    int bar = 0;
    for (Series drawn : series) {
      Svg swatch = new Svg(name + "-key", 34, 14, "");
      switch (drawn.kind()) {
        case LINE -> {
          swatch.element("path", "class", "line l" + line, "d", "M1 7H33");
          mark(swatch, line, 17, 7, "");
          line++;
        }
        case BAR -> {
          swatch.element(
              "rect",
              "class",
              "bar",
              "x",
              4,
              "y",
              1,
              "width",
              26,
              "height",
              12,
              "fill",
              Hatching.of(bar++).fill(name));
        }
        case LIMIT -> swatch.element("path", "class", "limit m" + limit++, "d", "M1 7H33");
      }
      key.add(
          new KeyEntry(
              swatch.end().replace("role=\"img\" aria-label=\"\"", "aria-hidden=\"true\""),
              drawn.name()));
    }
    return key;
  }

  private Scale scale() {
    List<Double> ends = new ArrayList<>();
    for (int month = 0; month < 12; month++) {
      double up = 0;
      double down = 0;
      for (Series drawn : series) {
        Double value = drawn.values().get(month);
        if (value != null && drawn.kind() == Series.Kind.BAR) {
          up += Math.max(value, 0);
          down += Math.min(value, 0);
        } else if (value != null) {
          ends.add(value);
        }
      }
      ends.add(up);
      ends.add(down);
    }
    if (powers) {
      List<Double> positive = ends.stream().filter(value -> value >= LEAST_POWER).toList();
      return positive.isEmpty()
          ? Scale.ofPowers(1, 10)
          : Scale.ofPowers(
              positive.stream().min(Double::compare).orElseThrow(),
              positive.stream().max(Double::compare).orElseThrow());
    }
    return Scale.over(
        ends.stream().min(Double::compare).orElse(0.0),
        ends.stream().max(Double::compare).orElse(1.0));
  }

  private void axes(Svg svg, Scale scale) {
    for (double tick : scale.ticks()) {
      double y = heightOf(scale, tick);
      boolean nought = !powers && Math.abs(tick) < 1e-12;
      svg.element(
          "path",
          "class",
          nought ? "nought" : "grid",
          "d",
          "M" + LEFT + " " + Svg.number(y) + "H" + (WIDTH - RIGHT));
      svg.text(tickText(tick), "class", "tick", "x", LEFT - 6, "y", y + 4, "text-anchor", "end");
    }
    svg.text(unit, "class", "unit", "x", 2, "y", 12);
    for (int month = 0; month < 12; month++) {
      svg.text(
          months.get(month),
          "class",
          "tick",
          "x",
          middle(month),
          "y",
          HEIGHT - 6,
          "text-anchor",
          "middle");
    }
  }

  private String tickText(double tick) {
    return powers ? Words.digits(Math.pow(10, tick)) : Words.digits(tick);
  }

  private void bars(Svg svg, Scale scale) {
    double[] up = new double[12];
    double[] down = new double[12];
    int bar = 0;
    for (Series drawn : series) {
      if (drawn.kind() != Series.Kind.BAR) {
        continue;
      }
      String fill = Hatching.of(bar++).fill(name);
      for (int month = 0; month < 12; month++) {
        Double value = drawn.values().get(month);
        if (value == null || value == 0) {
          continue;
        }
        double[] stack = value > 0 ? up : down;
        double from = heightOf(scale, stack[month]);
        stack[month] += value;
        double to = heightOf(scale, stack[month]);
        svg.titled(
            told(drawn, month),
            "rect",
            "class",
            "bar",
            "x",
            middle(month) - STEP * BAR / 2,
            "y",
            Math.min(from, to),
            "width",
            STEP * BAR,
            "height",
            Math.abs(from - to),
            "fill",
            fill);
      }
    }
  }

  private void line(Svg svg, Scale scale, Series drawn, int style) {
    StringBuilder path = new StringBuilder();
    boolean pen = false;
    for (int month = 0; month < 12; month++) {
      Double value = shown(drawn.values().get(month));
      if (value == null) {
        pen = false;
      } else {
        path.append(pen ? 'L' : 'M')
            .append(Svg.number(middle(month)))
            .append(' ')
            .append(Svg.number(heightOf(scale, value)));
        pen = true;
      }
    }
    svg.element("path", "class", "line l" + style, "d", path);
    for (int month = 0; month < 12; month++) {
      Double value = shown(drawn.values().get(month));
      if (value != null) {
        mark(svg, style, middle(month), heightOf(scale, value), told(drawn, month));
      }
    }
  }

  private void limit(Svg svg, Scale scale, Series drawn, int style) {
    Double value = shown(drawn.values().get(0));
    if (value != null) {
      double y = heightOf(scale, value);
      svg.titled(
          told(drawn, 0).substring(months.get(0).length() + 2),
          "path",
          "class",
          "limit m" + style,
          "d",
          "M" + LEFT + " " + Svg.number(y) + "H" + (WIDTH - RIGHT));
    }
  }

  private static void mark(Svg svg, int style, double x, double y, String title) {
    String shape =
        switch (style % 4) {
          case 0 -> "M-3.4 0A3.4 3.4 0 1 1 3.4 0A3.4 3.4 0 1 1-3.4 0Z";
          case 1 -> "M-3.2-3.2H3.2V3.2H-3.2Z";
          case 2 -> "M0-4L3.8 3H-3.8Z";
          default -> "M0-4.4L4 0L0 4.4L-4 0Z";
        };
    String place = "translate(" + Svg.number(x) + " " + Svg.number(y) + ")";
    if (title.isEmpty()) {
      svg.element("path", "class", "mark l" + style, "d", shape, "transform", place);
    } else {
      svg.titled(title, "path", "class", "mark l" + style, "d", shape, "transform", place);
    }
  }

  private String told(Series drawn, int month) {
    return Stream.of(
            months.get(month) + ", " + drawn.name() + ":",
            Words.digits(drawn.values().get(month)),
            unit)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** A value on the scale of powers as its exponent; values that it cannot show are left out. */
  private Double shown(Double value) {
    if (value == null || !powers) {
      return value;
    }
    return value < LEAST_POWER ? null : Double.valueOf(Math.log10(value));
  }

  private static double middle(int month) {
    return LEFT + STEP * (month + 0.5);
  }

  private static double heightOf(Scale scale, double value) {
    return HEIGHT - BOTTOM - (HEIGHT - BOTTOM - TOP) * scale.share(value);
  }

  /**
   * An entry of the key.
   *
   * @param swatch drawing of the line or area
   * @param name what it means
   */
  public record KeyEntry(String swatch, String name) {}
}
