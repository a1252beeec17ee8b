package org.marshlight.http.drawing;

/** How the areas of a chart are filled, in the order in which they are taken. */
enum Hatching {
  FULL("<rect class=\"ink\" width=\"8\" height=\"8\"/>"),
  STEEP("<path class=\"line\" d=\"M-2 2L2-2M0 8L8 0M6 10L10 6\"/>"),
  PALE("<rect class=\"pale\" width=\"8\" height=\"8\"/>"),
  DOTS(
      "<circle class=\"ink\" cx=\"2\" cy=\"2\" r=\"1.3\"/><circle class=\"ink\" cx=\"6\" cy=\"6\" r=\"1.3\"/>"),
  LEVEL("<path class=\"line\" d=\"M0 2H8M0 6H8\"/>"),
  FALLING("<path class=\"line\" d=\"M-2 6L2 10M0 0L8 8M6-2L10 2\"/>"),
  CROSSED("<path class=\"line\" d=\"M0 4H8M4 0V8\"/>"),
  EMPTY("");

  private final String content;

  Hatching(String content) {
    this.content = content;
  }

  static Hatching of(int index) {
    return values()[index % values().length];
  }

  String definition(String drawing) {
    return "<pattern id=\""
        + id(drawing)
        + "\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\" class=\"hatch h"
        + ordinal()
        + "\"><rect class=\"ground\" width=\"8\" height=\"8\"/>"
        + content
        + "</pattern>";
  }

  String fill(String drawing) {
    return "url(#" + id(drawing) + ")";
  }

  private String id(String drawing) {
    return drawing + "-h" + ordinal();
  }
}
