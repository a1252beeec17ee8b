package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.marshlight.contract.WireName;
import org.marshlight.decision.CalendarEntry;
import org.marshlight.decision.MaterialNeeded;
import org.marshlight.decision.WorkEstimate;
import org.marshlight.http.drawing.Series;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.report.Block.Table;
import org.marshlight.http.words.Words;

/** What building and running ask for: materials, hours, and what falls in which month. */
final class BuildingParts {

  private static final String DUE = "\u25cf";
  private static final int YEAR = 12;

  private BuildingParts() {}

  static Part materials(Sheet sheet, List<MaterialNeeded> materials) {
    List<Row> rows =
        materials.stream()
            .map(
                needed ->
                    Row.of(
                        Sentence.plain(sheet, needed.text()),
                        List.of(
                            sheet
                                .texts()
                                .plain("field.money.capital." + WireName.of(needed.part())),
                            sheet
                                .words()
                                .quantity(needed.amount(), needed.unit(), "crop." + needed.code()),
                            Sentence.plain(sheet, needed.basis()))))
            .toList();
    sheet.show(
        MaterialNeeded.class,
        "text",
        "part",
        "amount",
        "allowanceFraction",
        "basis",
        "embodiedKWh");
    return Part.of(
        "materials",
        sheet.texts().plain("question.materials"),
        List.of(
            Block.saying(List.of(sheet.texts().html("materials.meaning"))),
            Block.of(
                (String) null,
                sheet.table(
                    null,
                    List.of("table.what", "table.part", "table.amount", "table.basis"),
                    rows,
                    ""))));
  }

  static Part work(Sheet sheet, WorkEstimate work) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.saying(
            List.of(
                sheet.say("work.in-short", Map.of("hours", Words.digits(work.hoursPerYear()))))));
    blocks.add(
        sheet.months(
            "work",
            "h",
            "decision",
            List.of(sheet.series("series.work", Series.Kind.BAR, work, "monthlyHours")),
            false));
    List<Row> rows =
        work.tasks().stream()
            .map(
                task ->
                    Row.of(
                        Sentence.plain(sheet, task.text()),
                        List.of(sheet.words().quantity(task.hoursPerYear(), "h/a", "decision"))))
            .toList();
    sheet.show(
        WorkEstimate.Task.class, "text", "component", "hoursPerYear", "monthlyHours", "code");
    blocks.add(
        Block.of(
            (String) null, sheet.table(null, List.of("table.what", "table.amount"), rows, "")));
    blocks.add(Block.of(null, sheet.figures(work, "usefulKWhPerHour", "yearlyValue")));
    sheet.show(WorkEstimate.class, "hoursPerYear");
    return Part.of("work", sheet.texts().plain("question.work"), blocks);
  }

  static Part calendar(Sheet sheet, List<CalendarEntry> calendar) {
    List<String> heads = new ArrayList<>();
    heads.add(sheet.texts().plain("table.what"));
    heads.addAll(sheet.monthNames());
    List<Row> rows =
        calendar.stream()
            .map(
                entry ->
                    Row.of(
                        sheet.texts().coded(entry.code(), entry.params(), entry.text()).text(),
                        IntStream.rangeClosed(1, YEAR)
                            .mapToObj(month -> entry.months().contains(month) ? DUE : "")
                            .toList()))
            .toList();
    sheet.show(CalendarEntry.class, "text", "months", "code", "params");
    return Part.of(
        "calendar",
        sheet.texts().plain("question.calendar"),
        List.of(Block.of((String) null, new Table(null, heads, rows, "months calendar"))));
  }
}
