package org.marshlight.http.studies;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.marshlight.StudyAnswer;
import org.marshlight.contract.Notice;
import org.marshlight.contract.WireName;
import org.marshlight.decision.Verdict;
import org.marshlight.http.tables.CsvCell;
import org.marshlight.safety.Caution;
import org.marshlight.study.SweepStudy;

/**
 * A sweep as one long table: a row for each figure at each point, so that more figures are more
 * rows and never more columns. Cautions come first, then what was swept.
 */
final class SweepTable {

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader("kind", "id", "first", "second", "value", "unit", "text")
          .get();

  private final CSVPrinter printer;
  private final List<SweepStudy.Axis> axes;

  private SweepTable(CSVPrinter printer, List<SweepStudy.Axis> axes) {
    this.printer = printer;
    this.axes = axes;
  }

  /** The table of the answer to a sweep. */
  static String csv(StudyAnswer<?> answer) {
    SweepStudy study = (SweepStudy) answer.study();
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
      new SweepTable(printer, study.axes()).print(answer, study);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void print(StudyAnswer<?> answer, SweepStudy study) throws IOException {
    for (Caution caution : answer.cautions()) {
      say("caution", caution.id(), "", caution.text());
    }
    for (int axis = 0; axis < axes.size(); axis++) {
      say("axis", axis == 0 ? "first" : "second", axes.get(axis).unit(), axes.get(axis).pointer());
    }
    for (SweepStudy.Curve curve : study.figures()) {
      for (int point = 0; point < study.points(); point++) {
        row(curve.name(), point, curve.values().get(point), curve.unit(), "");
      }
    }
    verdicts(study);
    for (Notice notice : answer.notices()) {
      say("notice", notice.code(), "", notice.text());
    }
  }

  private void verdicts(SweepStudy study) throws IOException {
    for (SweepStudy.Answers verdict : study.verdicts()) {
      String bed = verdict.bed() == null ? "" : "." + verdict.bed();
      String id = "verdicts." + WireName.of(verdict.component()) + bed;
      for (int point = 0; point < study.points(); point++) {
        Verdict.Worth worth = verdict.answers().get(point);
        row(id, point, null, "", worth == null ? "" : WireName.of(worth));
      }
    }
  }

  private void row(String id, int point, Double value, String unit, String text)
      throws IOException {
    int inner = axes.size() == 2 ? axes.get(1).values().size() : 1;
    Double second = axes.size() == 2 ? axes.get(1).values().get(point % inner) : null;
    printer.printRecord(
        "value",
        CsvCell.text(id),
        CsvCell.number(axes.get(0).values().get(point / inner)),
        CsvCell.number(second),
        CsvCell.number(value),
        CsvCell.text(unit),
        text);
  }

  private void say(String kind, String id, String unit, String text) throws IOException {
    printer.printRecord(kind, CsvCell.text(id), "", "", "", CsvCell.text(unit), CsvCell.text(text));
  }
}
