package org.marshlight.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;

/**
 * What a verdict judges.
 *
 * @param component the part
 * @param bed name of the bed, for one of several beds; null otherwise
 */
record Judged(Component component, String bed) {

  static Judged of(Verdict verdict) {
    return new Judged(verdict.component(), verdict.bed());
  }

  /** The answer on each part that was judged, in the order of the verdicts. */
  static Map<Judged, Worth> answers(List<Verdict> verdicts) {
    Map<Judged, Worth> answers = new LinkedHashMap<>();
    verdicts.forEach(verdict -> answers.put(of(verdict), verdict.answer()));
    return answers;
  }
}
