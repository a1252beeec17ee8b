package org.marshlight.http.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Where a quantity goes in a year: processes from left to right in the order of the flow, ribbons
 * as wide as what passes. What comes from outside stands before the process that takes it, what
 * leaves after the last that gives it.
 *
 * @param name name that is unique on its page
 * @param alternative what a reader is told who cannot see it
 * @param flows what passes
 * @param processes names of the processes of the loop, in the order of the flow
 * @param words what a party is called
 * @param amount how an amount is told
 */
public record FlowDiagram(
    String name,
    String alternative,
    List<Ribbon> flows,
    List<String> processes,
    UnaryOperator<String> words,
    DoubleFunction<String> amount) {

  private static final double WIDTH = 940;
  private static final double SIDE = 120;
  private static final double BOX = 12;
  private static final double LINE = 13;

  /** Ribbons thinner than this share of the greatest are drawn as a hair. */
  private static final double HAIR = 0.9;

  /** The drawing. */
  public String svg() {
    FlowLayout layout = FlowLayout.of(flows, processes);
    double step = (WIDTH - 2 * SIDE - BOX) / Math.max(1, layout.columns() - 1);
    Svg svg = new Svg(name, WIDTH, layout.height(), alternative);
    layout.links().stream()
        .sorted(Comparator.comparingDouble(link -> -link.width()))
        .forEach(link -> ribbon(svg, link, step, layout.height()));
    layout.nodes().forEach(node -> box(svg, node, step, layout.columns()));
    return svg.end();
  }

  private void ribbon(Svg svg, FlowLayout.Link link, double step, double height) {
    double x0 = SIDE + link.from().column() * step + BOX;
    double x1 = SIDE + link.to().column() * step;
    double y0 = link.fromMiddle();
    double y1 = link.toMiddle();
    String path =
        x1 > x0
            ? curve(x0, y0, x1, y1)
            : "M%s %sC%s %s %s %s %s %s"
                .formatted(
                    words(x0),
                    words(y0),
                    words(x0 + 60),
                    words(height - 4),
                    words(x1 - 60),
                    words(height - 4),
                    words(x1),
                    words(y1));
    svg.titled(
        words.apply(link.from().party())
            + " \u2192 "
            + words.apply(link.to().party())
            + ": "
            + amount.apply(link.amount()),
        "path",
        "class",
        "ribbon " + kind(link),
        "d",
        path,
        "stroke-width",
        Math.max(HAIR, link.width()));
  }

  private static String kind(FlowLayout.Link link) {
    if (!link.from().process()) {
      return "comes";
    }
    return link.to().process() ? "passes" : "goes";
  }

  private static String curve(double x0, double y0, double x1, double y1) {
    double bend = (x1 - x0) / 2;
    return "M%s %sC%s %s %s %s %s %s"
        .formatted(
            words(x0),
            words(y0),
            words(x0 + bend),
            words(y0),
            words(x1 - bend),
            words(y1),
            words(x1),
            words(y1));
  }

  private void box(Svg svg, FlowLayout.Node node, double step, int columns) {
    double x = SIDE + node.column() * step;
    svg.element(
        "rect",
        "class",
        node.process() ? "box" : "outside",
        "x",
        x,
        "y",
        node.top(),
        "width",
        BOX,
        "height",
        Math.max(1.5, node.height()));
    String party = words.apply(node.party());
    String told = amount.apply(node.amount());
    double middle = node.top() + node.height() / 2;
    if (node.column() == 0) {
      label(svg, party, told, x - 6, middle - 1, "end");
    } else if (node.column() == columns - 1) {
      label(svg, party, told, x + BOX + 6, middle - 1, "start");
    } else {
      label(svg, party, told, x + BOX / 2, node.top() - LINE - 4, "middle");
    }
  }

  private static void label(
      Svg svg, String party, String amount, double x, double y, String anchor) {
    svg.text(party, "class", "party", "x", x, "y", y, "text-anchor", anchor);
    svg.text(amount, "class", "amount", "x", x, "y", y + LINE, "text-anchor", anchor);
  }

  private static String words(double length) {
    return Svg.number(length);
  }

  /**
   * An amount that passes from one party to another.
   *
   * @param from who gives
   * @param to who takes
   * @param amount how much
   */
  public record Ribbon(String from, String to, double amount) {

    /** What passes at all, the same two parties joined. */
    public static List<Ribbon> joined(List<Ribbon> flows) {
      List<Ribbon> joined = new ArrayList<>();
      for (Ribbon flow : flows) {
        int same = -1;
        for (int i = 0; i < joined.size(); i++) {
          if (joined.get(i).from().equals(flow.from()) && joined.get(i).to().equals(flow.to())) {
            same = i;
          }
        }
        if (same < 0) {
          joined.add(flow);
        } else {
          joined.set(
              same, new Ribbon(flow.from(), flow.to(), joined.get(same).amount() + flow.amount()));
        }
      }
      return joined;
    }
  }
}
