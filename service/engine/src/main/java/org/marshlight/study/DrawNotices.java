package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Notice;

/** Remarks on what was drawn. */
final class DrawNotices {

  private DrawNotices() {}

  /**
   * The remarks.
   *
   * @param climate stated uncertainty of the climate; null if it was taken as certain
   * @param without draws without an answer
   * @param draws all draws
   */
  static List<Notice> of(ClimateSpread climate, int without, int draws) {
    List<Notice> notices = new ArrayList<>();
    if (climate == null) {
      notices.add(Notice.of("study.climate-certain"));
    }
    if (without > 0) {
      notices.add(
          Notice.of(
              "study.draws-without-answer", "draws", without, "percent", 100.0 * without / draws));
    }
    return List.copyOf(notices);
  }
}
