package org.marshlight.http.drawing;

import java.util.List;
import org.marshlight.http.words.Words;

/**
 * A few amounts side by side, each as a bar with its name.
 *
 * @param name name that is unique on its page
 * @param alternative what a reader is told who cannot see it
 * @param unit unit as people write it
 * @param bars the amounts
 */
public record BarList(String name, String alternative, String unit, List<Bar> bars) {

  private static final double WIDTH = 460;
  private static final double ROW = 40;
  private static final double BAR = 14;
  private static final double VALUE = 90;

  /** The drawing. */
  public String svg() {
    double most = bars.stream().mapToDouble(bar -> Math.abs(bar.value())).max().orElse(0);
    Svg svg = new Svg(name, WIDTH, ROW * bars.size(), alternative).hatchings(name);
    for (int i = 0; i < bars.size(); i++) {
      Bar bar = bars.get(i);
      double y = ROW * i;
      double length = most == 0 ? 0 : (WIDTH - VALUE) * Math.abs(bar.value()) / most;
      svg.text(bar.name(), "class", "tick", "x", 0, "y", y + 14);
      svg.element(
          "rect",
          "class",
          "bar",
          "x",
          0.5,
          "y",
          y + 19,
          "width",
          Math.max(length, 1),
          "height",
          BAR,
          "fill",
          Hatching.of(bar.style()).fill(name));
      svg.text(
          (Words.digits(bar.value()) + " " + unit).trim(),
          "class",
          "tick",
          "x",
          length + 6,
          "y",
          y + 30);
    }
    return svg.end();
  }

  /**
   * One amount.
   *
   * @param name what it is
   * @param value how much
   * @param style number of its hatching
   */
  public record Bar(String name, double value, int style) {}
}
