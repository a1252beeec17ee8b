package org.marshlight.http.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.marshlight.Answer;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Reason;
import org.marshlight.decision.Verdict;
import org.marshlight.evidence.Source;
import org.marshlight.evidence.SourceList;
import org.marshlight.http.report.Report.Block;
import org.marshlight.http.report.Report.Section;
import org.marshlight.loop.Plan;

/** Puts an answer and its plan into the words of a report. */
final class ReportBuilder {

  private static final String VERDICTS = "verdicts";
  private static final String YEARLY = "annual";

  private static final Map<String, String> QUESTIONS =
      Map.of(
          "digester", "How warm? How much gas?",
          "wetland", "How clean does the water get?",
          "crop", "What do the beds grow?",
          "ethanol", "How much fuel, and at what heat?",
          "compost", "What returns to the land?",
          "balances", "Does it add up?",
          "flows", "What goes where?",
          "closure", "How closed is the loop?",
          "working", "How was it worked out?");

  private ReportBuilder() {}

  static Report of(Answer<?> answer, Plan plan) {
    PlanEstimate estimate = (PlanEstimate) answer.estimate();
    List<Section> sections = new ArrayList<>();
    List<Block> headline = new ArrayList<>();
    parts(estimate)
        .forEach(
            (name, part) -> {
              headline.addAll(headline(name, part));
              sections.add(section(question(name), part));
            });
    sections.add(section("What was planned?", plan));
    sections.removeIf(section -> section.blocks().isEmpty());
    return new Report(
        plan.name() == null ? "A plan without a name" : plan.name(),
        answer.cautions(),
        estimate.verdicts() == null
            ? List.of()
            : estimate.verdicts().stream().map(ReportBuilder::card).toList(),
        headline,
        sections,
        answer.notices(),
        answer.assumptions().stream()
            .map(a -> new Report.Given(a, Words.value(a.value())))
            .toList(),
        sources(answer.assumptions()),
        answer.meta().version(),
        answer.meta().planSha256());
  }

  /** The parts of the estimate that the plan has, verdicts apart. */
  private static Map<String, Object> parts(PlanEstimate estimate) {
    Map<String, Object> parts = new LinkedHashMap<>();
    for (RecordShape.Field field : RecordShape.of(PlanEstimate.class).fields()) {
      Object part = field.of(estimate);
      if (part != null && !field.name().equals(VERDICTS)) {
        parts.put(field.name(), part);
      }
    }
    return parts;
  }

  private static List<Block> headline(String name, Object part) {
    if (!(part instanceof Record stage)) {
      return List.of();
    }
    return RecordShape.of(stage.getClass())
        .field(YEARLY)
        .map(field -> Blocks.of(question(name), field.of(stage)))
        .orElse(List.of());
  }

  private static Section section(String heading, Object part) {
    return new Section(heading, Blocks.of(heading, part));
  }

  private static String question(String name) {
    return QUESTIONS.getOrDefault(name, Words.spaced(name));
  }

  private static Report.Card card(Verdict verdict) {
    return new Report.Card(
        Words.spaced(WireName.of(verdict.component())),
        WireName.of(verdict.answer()),
        verdict.reasons().stream().map(Reason::text).toList(),
        verdict.conditions().stream().map(Reason::text).toList());
  }

  private static List<Source> sources(List<Assumption> assumptions) {
    TreeSet<String> ids = new TreeSet<>();
    assumptions.forEach(assumption -> ids.add(assumption.source()));
    return ids.stream().flatMap(id -> SourceList.standard().find(id).stream()).toList();
  }
}
