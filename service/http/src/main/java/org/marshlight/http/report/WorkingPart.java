package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.marshlight.http.report.Block.Row;
import org.marshlight.http.words.Words;
import org.marshlight.loop.StageWorking;

/** The steps of each stage at its design point, always in SI: each can be worked again so. */
final class WorkingPart {

  private WorkingPart() {}

  static Part of(Sheet sheet, List<StageWorking> working) {
    List<Block> blocks = new ArrayList<>();
    for (StageWorking stage : working) {
      List<Row> rows =
          stage.steps().stream()
              .map(
                  step ->
                      Row.of(
                          step.formula(),
                          List.of(
                              step.inputs().entrySet().stream()
                                  .map(e -> e.getKey() + " = " + Words.digits(e.getValue()))
                                  .collect(Collectors.joining(", ")),
                              Words.digits(step.value()),
                              step.unit(),
                              step.source())))
              .toList();
      blocks.add(
          Block.of(
              Words.text(stage.stage()),
              sheet.table(
                  null,
                  List.of(
                      "table.formula", "table.inputs", "table.value", "table.unit", "table.source"),
                  rows,
                  "dense")));
    }
    return Part.of("working", sheet.texts().plain("question.working"), blocks);
  }
}
