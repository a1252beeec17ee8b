package org.marshlight.http.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.marshlight.Answer;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.safety.Caution;

/**
 * An answer as one long table: a row for each figure, so that new figures are new rows and never
 * new columns. Cautions come first.
 */
final class AnswerTable {

  private final List<TableRow> rows = new ArrayList<>();

  private AnswerTable() {}

  static List<TableRow> of(Answer<?> answer) {
    AnswerTable table = new AnswerTable();
    for (Caution caution : answer.cautions()) {
      table.say(TableRow.CAUTION, caution.id(), caution.text());
    }
    table.record((Record) answer.estimate(), "");
    answer.assumptions().forEach(table::assumption);
    for (Notice notice : answer.notices()) {
      table.say(
          notice.severity() == Notice.Severity.SEVERE ? TableRow.SEVERE_NOTICE : TableRow.NOTICE,
          notice.code(),
          notice.text());
    }
    table.record(answer.meta(), "meta");
    return table.rows;
  }

  private void record(Record record, String path) {
    RecordShape shape = RecordShape.of(record.getClass());
    for (RecordShape.Field field : shape.fields()) {
      if (!FigureUnit.isUnitOfSiblings(shape, field)) {
        String id = path.isEmpty() ? field.name() : path + "." + field.name();
        Object value = field.of(record);
        String unit = FigureUnit.of(record, field);
        if (field.monthly() && value instanceof List<?> months) {
          months(months, id, unit);
        } else if (value == null && field.quantity().isPresent()) {
          rows.add(new TableRow(TableRow.VALUE, id, null, null, unit, ""));
        } else {
          any(value, id, unit);
        }
      }
    }
  }

  private void any(Object value, String id, String unit) {
    if (value instanceof Record record) {
      record(record, id);
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        any(list.get(i), id + "." + i, unit);
      }
    } else if (value instanceof Map<?, ?> map) {
      map.forEach((name, entry) -> any(entry, id + "." + name, unit));
    } else if (value instanceof Number number) {
      rows.add(new TableRow(TableRow.VALUE, id, null, number, unit, ""));
    } else if (value instanceof Enum<?> choice) {
      say(TableRow.VALUE, id, WireName.of(choice));
    } else if (value != null) {
      say(TableRow.VALUE, id, value.toString());
    }
  }

  private void months(List<?> months, String id, String unit) {
    for (int month = 0; month < months.size(); month++) {
      rows.add(new TableRow(TableRow.VALUE, id, month + 1, (Number) months.get(month), unit, ""));
    }
  }

  private void assumption(Assumption assumption) {
    rows.add(
        new TableRow(
            TableRow.VALUE,
            "assumptions." + assumption.id(),
            null,
            assumption.value(),
            assumption.unit() == null ? "" : assumption.unit(),
            assumption.text() + " (" + assumption.source() + ", " + assumption.mark() + ")"));
  }

  private void say(String kind, String id, String text) {
    rows.add(new TableRow(kind, id, null, null, "", text));
  }
}
