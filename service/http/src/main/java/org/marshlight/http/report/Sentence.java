package org.marshlight.http.report;

import io.quarkus.qute.RawString;
import java.util.Map;
import org.marshlight.contract.Notice;
import org.marshlight.decision.Reason;
import org.marshlight.http.words.Said;
import org.marshlight.http.words.Words;
import org.marshlight.safety.Caution;

/** Sentences of the engine as a report prints them. */
final class Sentence {

  private Sentence() {}

  /** A notice; one that figures cannot be relied on says so first. */
  static RawString of(Sheet sheet, Notice notice) {
    RawString said = printed(sheet.texts().notice(notice));
    return notice.severity() == Notice.Severity.SEVERE
        ? new RawString(
            "<strong>"
                + sheet.texts().html("notice.severe").getValue()
                + "</strong> "
                + said.getValue())
        : said;
  }

  static RawString of(Sheet sheet, Reason reason) {
    return printed(sheet.texts().coded(reason.code(), reason.params(), reason.text()));
  }

  /** A sentence with a code of its own. */
  static RawString coded(Sheet sheet, String code, Map<String, Object> params, String text) {
    return printed(sheet.texts().coded(code, params, text));
  }

  static RawString hazard(Sheet sheet, Caution caution) {
    return printed(sheet.texts().hazard(caution));
  }

  static RawString text(Sheet sheet, Caution caution) {
    return printed(sheet.texts().caution(caution));
  }

  /** A sentence that only English has. */
  static RawString english(Sheet sheet, String code, String text) {
    return printed(sheet.texts().coded(code, Map.of(), text));
  }

  /** The same for the cell of a table. */
  static String plain(Sheet sheet, String text) {
    return Words.sentence(text);
  }

  private static RawString printed(Said said) {
    return new Said(Words.sentence(said.text()), said.otherLanguage()).html();
  }
}
