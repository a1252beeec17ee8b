package org.marshlight.study;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.decision.Verdict;

/** Looks verdicts up by the part they judge. */
final class VerdictList {

  private VerdictList() {}

  /** The answer on each part. */
  static Map<Verdict.Component, Verdict.Worth> byComponent(List<Verdict> verdicts) {
    Map<Verdict.Component, Verdict.Worth> answers = new TreeMap<>();
    for (Verdict verdict : verdicts) {
      answers.put(verdict.component(), verdict.answer());
    }
    return answers;
  }
}
