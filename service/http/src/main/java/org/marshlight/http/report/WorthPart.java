package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.List;
import org.marshlight.contract.WireName;
import org.marshlight.decision.Verdict;

/** Whether each part is worth building. */
public final class WorthPart {

  private WorthPart() {}

  static List<Card> cards(Sheet sheet, List<Verdict> verdicts) {
    return verdicts == null
        ? List.of()
        : verdicts.stream().map(verdict -> card(sheet, verdict)).toList();
  }

  private static Card card(Sheet sheet, Verdict verdict) {
    String answer = WireName.of(verdict.answer());
    return new Card(
        component(sheet, verdict),
        answer,
        sheet.texts().plain("answer." + answer),
        verdict.reasons().stream().map(reason -> Sentence.of(sheet, reason)).toList(),
        verdict.conditions().stream().map(reason -> Sentence.of(sheet, reason)).toList());
  }

  private static String component(Sheet sheet, Verdict verdict) {
    String name = sheet.texts().plain("component." + WireName.of(verdict.component()));
    return verdict.bed() == null ? name : name + " " + verdict.bed().replaceAll("\\D+", "");
  }

  /**
   * The verdict on one part.
   *
   * @param component the part
   * @param answer stable name of the answer
   * @param said the answer in words
   * @param reasons why
   * @param conditions what must be answered first
   */
  public record Card(
      String component,
      String answer,
      String said,
      List<RawString> reasons,
      List<RawString> conditions) {}
}
