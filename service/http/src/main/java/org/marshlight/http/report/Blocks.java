package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.http.report.Report.Block;
import org.marshlight.http.report.Report.Figure;
import org.marshlight.http.report.Report.Grid;
import org.marshlight.http.report.Report.MonthRow;
import org.marshlight.http.tables.FigureUnit;

/** Lays any record of the contract out as blocks of figures, by its shape alone. */
final class Blocks {

  private final List<Block> blocks = new ArrayList<>();

  private Blocks() {}

  /** The blocks of a record or of a list of records. */
  static List<Block> of(String heading, Object value) {
    Blocks layout = new Blocks();
    layout.place(heading, value);
    return List.copyOf(layout.blocks);
  }

  private void place(String heading, Object value) {
    if (value instanceof Record record) {
      block(heading, record);
    } else if (value instanceof List<?> list && !list.isEmpty()) {
      list(heading, list);
    }
  }

  private void block(String heading, Record record) {
    RecordShape shape = RecordShape.of(record.getClass());
    List<Figure> figures = new ArrayList<>();
    List<MonthRow> months = new ArrayList<>();
    List<RecordShape.Field> nested = new ArrayList<>();
    for (RecordShape.Field field : shape.fields()) {
      Object value = field.of(record);
      String label = Words.label(field.meaning());
      String unit = Words.unit(FigureUnit.of(record, field));
      if (field.monthly() && value instanceof List<?> list) {
        months.add(new MonthRow(label, unit, list.stream().map(Words::value).toList()));
      } else if (!isPlain(value)) {
        nested.add(field);
      } else if (worthALine(field, value) && !FigureUnit.isUnitOfSiblings(shape, field)) {
        figures.add(new Figure(label, Words.value(value), unit));
      }
    }
    if (!figures.isEmpty() || !months.isEmpty()) {
      blocks.add(new Block(heading, figures, months, null));
    }
    nested.forEach(field -> place(Words.label(field.meaning()), field.of(record)));
  }

  private void list(String heading, List<?> list) {
    boolean flat = list.stream().allMatch(element -> element instanceof Record r && isFlat(r));
    if (flat) {
      blocks.add(new Block(heading, List.of(), List.of(), grid(list)));
    } else {
      for (int i = 0; i < list.size(); i++) {
        place(heading + ", " + (i + 1), list.get(i));
      }
    }
  }

  private static Grid grid(List<?> records) {
    RecordShape shape = RecordShape.of(((Record) records.get(0)).getClass());
    List<String> columns = shape.fields().stream().map(Blocks::column).toList();
    List<List<String>> rows = new ArrayList<>();
    for (Object element : records) {
      rows.add(shape.fields().stream().map(f -> Words.value(f.of((Record) element))).toList());
    }
    return new Grid(columns, rows);
  }

  private static String column(RecordShape.Field field) {
    String unit =
        field
            .quantity()
            .map(Quantity::unit)
            .filter(code -> !code.equals(Quantity.UNIT_BESIDE))
            .map(Words::unit)
            .orElse("");
    String label = Words.label(field.meaning());
    return unit.isEmpty() ? label : label + " (" + unit + ")";
  }

  private static boolean worthALine(RecordShape.Field field, Object value) {
    boolean emptyCollection =
        value instanceof Collection<?> c && c.isEmpty()
            || value instanceof Map<?, ?> m && m.isEmpty();
    return !emptyCollection && (value != null || field.quantity().isPresent());
  }

  private static boolean isFlat(Record record) {
    return RecordShape.of(record.getClass()).fields().stream()
        .allMatch(field -> !field.monthly() && isPlain(field.of(record)));
  }

  /** Whether a value fits into one cell. */
  private static boolean isPlain(Object value) {
    if (value instanceof Collection<?> list) {
      return list.stream().noneMatch(Record.class::isInstance);
    }
    return !(value instanceof Record);
  }
}
