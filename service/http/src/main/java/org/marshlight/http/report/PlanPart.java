package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.HoursDesign;
import org.marshlight.contract.RecordShape;
import org.marshlight.http.report.Block.Figure;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.report.Block.Table;
import org.marshlight.http.tables.FigureUnit;
import org.marshlight.loop.Plan;

/** What was planned: every field that the plan gives, under the name that the page gives it. */
final class PlanPart {

  private final Sheet sheet;
  private final List<Block> blocks = new ArrayList<>();

  private PlanPart(Sheet sheet) {
    this.sheet = sheet;
  }

  static Part of(Sheet sheet, Plan plan) {
    PlanPart part = new PlanPart(sheet);
    part.section(plan, "", null);
    return Part.of("plan", sheet.texts().plain("question.plan"), part.blocks);
  }

  private void section(Record record, String path, String heading) {
    List<Figure> figures = new ArrayList<>();
    List<Row> months = new ArrayList<>();
    List<RecordShape.Field> below = new ArrayList<>();
    for (RecordShape.Field field : RecordShape.of(record.getClass()).fields()) {
      Object value = field.of(record);
      if (value == null || value instanceof HoursDesign) {
        continue;
      }
      if (value instanceof Record || isRecords(value)) {
        below.add(field);
      } else if (field.monthly()) {
        if (!sheet.wasShown(record, field)) {
          months.add(months(record, field, path));
        }
      } else if (!(value instanceof Map<?, ?> map && map.isEmpty())) {
        figures.add(figure(record, field, path));
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
    for (RecordShape.Field field : below) {
      below(field, field.of(record), path);
    }
  }

  private void below(RecordShape.Field field, Object value, String path) {
    String inner = join(path, field.name());
    if (value instanceof Record record) {
      section(record, inner, label(field, path));
    } else {
      List<?> list = (List<?>) value;
      for (int i = 0; i < list.size(); i++) {
        section((Record) list.get(i), inner, label(field, path) + ", " + (i + 1));
      }
    }
  }

  private Figure figure(Record record, RecordShape.Field field, String path) {
    String ucum = FigureUnit.of(record, field);
    String place = join(path, field.name());
    return new Figure(
        label(field, path),
        sheet.value(field.of(record), ucum.isEmpty() ? "1" : ucum, place),
        ucum.isEmpty() ? "" : sheet.words().unit(ucum, place));
  }

  private Row months(Record record, RecordShape.Field field, String path) {
    String ucum = FigureUnit.of(record, field);
    String place = join(path, field.name());
    String unit = sheet.words().unit(ucum, place);
    return Row.of(
        unit.isEmpty() ? label(field, path) : label(field, path) + ", " + unit,
        ((List<?>) field.of(record))
            .stream().map(value -> sheet.words().value(value, ucum, place)).toList());
  }

  private String label(RecordShape.Field field, String path) {
    return Assumed.label(sheet.texts(), join(path, field.name()), field.meaning());
  }

  private static boolean isRecords(Object value) {
    return value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Record;
  }

  private static String join(String path, String name) {
    return path.isEmpty() ? name : path + "." + name;
  }
}
