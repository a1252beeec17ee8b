package org.marshlight.http.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays a diagram of flows out: columns by the order of the flow, then heights by pulling each box
 * towards those that it is joined to, a few times from the left and from the right.
 */
final class FlowLayout {

  private static final double TALLEST = 170;
  private static final double GAP = 38;
  private static final double EDGE = 34;
  private static final int SWEEPS = 12;

  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final List<Link> links = new ArrayList<>();
  private int columns;
  private double height;

  private FlowLayout() {}

  static FlowLayout of(List<FlowDiagram.Ribbon> flows, List<String> processes) {
    FlowLayout layout = new FlowLayout();
    for (FlowDiagram.Ribbon flow : flows) {
      layout.links.add(
          new Link(
              layout.node(flow.from(), "from ", processes),
              layout.node(flow.to(), "to ", processes),
              flow.amount()));
    }
    layout.links.forEach(Link::join);
    layout.arrange(processes);
    layout.stack();
    layout.pull();
    layout.attach();
    return layout;
  }

  int columns() {
    return columns;
  }

  double height() {
    return height;
  }

  List<Node> nodes() {
    return List.copyOf(nodes.values());
  }

  List<Link> links() {
    return links;
  }

  /** A process stands once; whoever else gives and takes stands once for each. */
  private Node node(String party, String side, List<String> processes) {
    boolean process = processes.contains(party);
    return nodes.computeIfAbsent(process ? party : side + party, key -> new Node(party, process));
  }

  private void arrange(List<String> processes) {
    for (String process : processes) {
      Node node = nodes.get(process);
      if (node != null) {
        node.column = 1;
        for (Link link : node.in) {
          if (link.from.process
              && processes.indexOf(link.from.party) < processes.indexOf(process)) {
            node.column = Math.max(node.column, link.from.column + 1);
          }
        }
      }
    }
    for (Node node : nodes.values()) {
      if (!node.process) {
        node.column =
            node.in.isEmpty()
                ? node.out.stream().mapToInt(link -> link.to.column).min().orElse(1) - 1
                : node.in.stream().mapToInt(link -> link.from.column).max().orElse(0) + 1;
      }
    }
    columns = nodes.values().stream().mapToInt(node -> node.column).max().orElse(0) + 1;
  }

  private List<Node> column(int column) {
    return new ArrayList<>(nodes.values().stream().filter(n -> n.column == column).toList());
  }

  /** Boxes of each column one below the other, as tall as what passes through them. */
  private void stack() {
    double most = 0;
    for (int column = 0; column < columns; column++) {
      most = Math.max(most, column(column).stream().mapToDouble(Node::amount).sum());
    }
    double scale = most > 0 ? TALLEST / most : 0;
    links.forEach(link -> link.width = link.amount * scale);
    for (int column = 0; column < columns; column++) {
      double y = EDGE;
      for (Node node : column(column)) {
        node.height = node.amount() * scale;
        node.top = y;
        y += node.height + GAP;
      }
      height = Math.max(height, y - GAP + EDGE / 2);
    }
  }

  private void pull() {
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      boolean fromLeft = sweep % 2 == 0;
      for (int i = 0; i < columns; i++) {
        List<Node> column = column(fromLeft ? i : columns - 1 - i);
        column.forEach(node -> node.pull(fromLeft));
        column.sort(Comparator.comparingDouble(Node::middle));
        apart(column);
      }
    }
  }

  /** Moves boxes that stand too close down, then those that were pushed out up again. */
  private void apart(List<Node> column) {
    double free = EDGE;
    for (Node node : column) {
      node.top = Math.max(node.top, free);
      free = node.top + node.height + GAP;
    }
    double floor = height - EDGE / 2;
    for (int i = column.size() - 1; i >= 0; i--) {
      Node node = column.get(i);
      node.top = Math.min(node.top, floor - node.height);
      floor = node.top - GAP;
    }
  }

  /** Ribbons leave and enter a box in the order of where they lead. */
  private void attach() {
    for (Node node : nodes.values()) {
      double y = node.top;
      node.out.sort(Comparator.comparingDouble(link -> link.to.middle()));
      for (Link link : node.out) {
        link.fromMiddle = y + link.width / 2;
        y += link.width;
      }
      y = node.top;
      node.in.sort(Comparator.comparingDouble(link -> link.from.middle()));
      for (Link link : node.in) {
        link.toMiddle = y + link.width / 2;
        y += link.width;
      }
    }
  }

  /** A party of the diagram. */
  static final class Node {

    private final String party;
    private final boolean process;
    private final List<Link> in = new ArrayList<>();
    private final List<Link> out = new ArrayList<>();
    private int column;
    private double top;
    private double height;

    private Node(String party, boolean process) {
      this.party = party;
      this.process = process;
    }

    String party() {
      return party;
    }

    boolean process() {
      return process;
    }

    int column() {
      return column;
    }

    double top() {
      return top;
    }

    double height() {
      return height;
    }

    /** What passes through it. */
    double amount() {
      return Math.max(sum(in), sum(out));
    }

    private double middle() {
      return top + height / 2;
    }

    private void pull(boolean fromLeft) {
      List<Link> towards = fromLeft ? in : out;
      double weight = 0;
      double moment = 0;
      for (Link link : towards) {
        Node other = fromLeft ? link.from : link.to;
        weight += link.amount;
        moment += link.amount * other.middle();
      }
      if (weight > 0) {
        top = moment / weight - height / 2;
      }
    }

    private static double sum(List<Link> links) {
      return links.stream().mapToDouble(link -> link.amount).sum();
    }
  }

  /** What passes between two parties. */
  static final class Link {

    private final Node from;
    private final Node to;
    private final double amount;
    private double width;
    private double fromMiddle;
    private double toMiddle;

    private Link(Node from, Node to, double amount) {
      this.from = from;
      this.to = to;
      this.amount = amount;
    }

    Node from() {
      return from;
    }

    Node to() {
      return to;
    }

    double amount() {
      return amount;
    }

    double width() {
      return width;
    }

    double fromMiddle() {
      return fromMiddle;
    }

    double toMiddle() {
      return toMiddle;
    }

    private void join() {
      from.out.add(this);
      to.in.add(this);
    }
  }
}
