package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.Collectors;
import org.marshlight.http.drawing.MonthChart;

/**
 * What stands under a question of the report: some of a heading, sentences, figures, a chart with
 * its table, a table.
 *
 * @param heading heading of its own; null for none
 * @param sentences sentences as markup
 * @param figures figures, one a line
 * @param chart a chart; null for none
 * @param table a table; null for none
 */
public record Block(
    String heading, List<RawString> sentences, List<Figure> figures, Chart chart, Table table) {

  static Block of(String heading, List<Figure> figures) {
    return new Block(heading, List.of(), figures, null, null);
  }

  static Block of(String heading, Table table) {
    return new Block(heading, List.of(), List.of(), null, table);
  }

  static Block of(Chart chart) {
    return new Block(null, List.of(), List.of(), chart, null);
  }

  static Block saying(List<RawString> sentences) {
    return new Block(null, sentences, List.of(), null, null);
  }

  static Block saying(String heading, List<RawString> sentences) {
    return new Block(heading, sentences, List.of(), null, null);
  }

  /** Whether it has nothing to show. */
  public boolean empty() {
    return sentences.isEmpty()
        && figures.isEmpty()
        && chart == null
        && (table == null || table.rows().isEmpty());
  }

  /**
   * One figure.
   *
   * @param label what it is
   * @param value the number
   * @param unit its unit
   */
  public record Figure(String label, String value, String unit) {}

  /**
   * A chart with the table behind it.
   *
   * @param name name that is unique in the report
   * @param caption what it shows
   * @param svg the drawing
   * @param key what its lines and areas mean
   * @param table the same numbers
   * @param wide whether it wants the whole width
   */
  public record Chart(
      String name,
      String caption,
      RawString svg,
      List<MonthChart.KeyEntry> key,
      Table table,
      boolean wide) {}

  /**
   * A table; the first cell of a row names it.
   *
   * @param caption what it holds
   * @param columns heads
   * @param rows rows
   * @param kind how it is set: {@code months} for small print, {@code dense} for annexes
   */
  public record Table(String caption, List<String> columns, List<Row> rows, String kind) {

    /** What it is called by those who cannot see it: its caption, or else its heads. */
    public String label() {
      return caption != null
          ? caption
          : columns.stream().filter(head -> !head.isEmpty()).collect(Collectors.joining(", "));
    }
  }

  /**
   * A row.
   *
   * @param head its first cell
   * @param cells the others
   */
  public record Row(String head, List<Cell> cells) {

    static Row of(String head, List<String> texts) {
      return new Row(head, texts.stream().map(Cell::of).toList());
    }
  }

  /**
   * A cell.
   *
   * @param text its content
   * @param number whether it is set as a number
   */
  public record Cell(String text, boolean number) {

    static Cell of(String text) {
      return new Cell(text, text.matches("[\u2212-]?[0-9\u202f.,E]+(\u00a0.*)?|\u2013"));
    }
  }
}
