package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marshlight.contract.RecordShape;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.report.Block.Table;
import org.marshlight.http.words.Words;

/**
 * Whatever the estimate holds beyond what the other parts have shown, laid out by the shape of its
 * records alone, so that a new figure is in the report as soon as it is in the answer.
 */
final class Annex {

  /** What other parts show whole. */
  private static final Set<String> ELSEWHERE =
      Set.of(
          "balances",
          "flows",
          "closure",
          "verdicts",
          "working",
          "alternatives",
          "materials",
          "calendar");

  /** What programs distinguish records by, and units, which are shown with their numbers. */
  private static final Set<String> FOR_PROGRAMS = Set.of("code", "params", "unit");

  private final Sheet sheet;
  private final List<Block> blocks = new ArrayList<>();

  private Annex(Sheet sheet) {
    this.sheet = sheet;
  }

  static Part of(Sheet sheet, PlanEstimate estimate) {
    Annex annex = new Annex(sheet);
    for (RecordShape.Field field : RecordShape.of(PlanEstimate.class).fields()) {
      if (!ELSEWHERE.contains(field.name()) && field.of(estimate) != null) {
        annex.place(Words.spaced(field.name()), field.of(estimate));
      }
    }
    return Part.of("annex", sheet.texts().plain("question.annex"), annex.blocks);
  }

  private void place(String heading, Object value) {
    if (value instanceof Record record) {
      record(heading, record);
    } else if (value instanceof List<?> list && !list.isEmpty()) {
      list(heading, list);
    }
  }

  private void record(String heading, Record record) {
    RecordShape shape = RecordShape.of(record.getClass());
    List<Figure> figures = new ArrayList<>();
    List<Row> months = new ArrayList<>();
    List<RecordShape.Field> nested = new ArrayList<>();
    for (RecordShape.Field field : shape.fields()) {
      Object value = field.of(record);
      if (!isPlain(value)) {
        nested.add(field);
      } else if (!sheet.wasShown(record, field) && worthALine(field, value)) {
        if (field.monthly() && value instanceof List<?>) {
          months.add(months(record, field));
        } else if (!FOR_PROGRAMS.contains(field.name())) {
          figures.add(sheet.peek(record, field));
        }
      }
    }
    blocks.add(Block.of(heading, figures));
    if (!months.isEmpty()) {
      List<String> heads = new ArrayList<>();
      heads.add("");
      heads.addAll(sheet.monthNames());
      blocks.add(
          Block.of(figures.isEmpty() ? heading : null, new Table(null, heads, months, "months")));
    }
    nested.forEach(
        field -> place(heading + ": " + lower(Words.label(field.meaning())), field.of(record)));
  }

  private void list(String heading, List<?> list) {
    boolean flat = list.stream().allMatch(element -> element instanceof Record r && isFlat(r));
    if (!flat) {
      for (int i = 0; i < list.size(); i++) {
        place(heading + " " + (i + 1), list.get(i));
      }
      return;
    }
    List<Record> records = list.stream().map(Record.class::cast).toList();
    String[] names =
        RecordShape.of(records.get(0).getClass()).fields().stream()
            .filter(field -> !sheet.wasShown(records.get(0), field))
            .map(RecordShape.Field::name)
            .filter(name -> !FOR_PROGRAMS.contains(name))
            .toArray(String[]::new);
    if (names.length > 0) {
      blocks.add(Block.of(heading, sheet.grid(null, records, names)));
    }
  }

  private Row months(Record record, RecordShape.Field field) {
    Figure head = sheet.peek(record, field);
    return Row.of(
        head.unit().isEmpty() ? head.label() : head.label() + ", " + head.unit(),
        sheet.each(record, field));
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

  private static String lower(String label) {
    return label.isEmpty() ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
  }
}
