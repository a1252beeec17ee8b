package org.marshlight.http.report;

import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.Source;
import org.marshlight.safety.Caution;

/**
 * What a report shows, in words.
 *
 * @param name name of the plan
 * @param cautions what can hurt, shown first
 * @param verdicts whether each part is worth building
 * @param headline figures over the year, stage by stage
 * @param sections every figure
 * @param notices remarks
 * @param assumptions what was taken as given
 * @param sources the sources that the assumptions name
 * @param version version of the engine
 * @param planSha256 hash of the plan as sent
 */
record Report(
    String name,
    List<Caution> cautions,
    List<Card> verdicts,
    List<Block> headline,
    List<Section> sections,
    List<Notice> notices,
    List<Given> assumptions,
    List<Source> sources,
    String version,
    String planSha256) {

  /** The verdict on one part. */
  record Card(String component, String answer, List<String> reasons, List<String> conditions) {}

  /** A part of the report under its own question. */
  record Section(String heading, List<Block> blocks) {}

  /** Figures that belong together. */
  record Block(String heading, List<Figure> figures, List<MonthRow> months, Grid grid) {}

  /** One figure. */
  record Figure(String label, String value, String unit) {}

  /** One figure for each month. */
  record MonthRow(String label, String unit, List<String> values) {}

  /** A table of like things; null columns and rows are never shown. */
  record Grid(List<String> columns, List<List<String>> rows) {}

  /** An assumption with its number in words. */
  record Given(Assumption assumption, String value) {}
}
