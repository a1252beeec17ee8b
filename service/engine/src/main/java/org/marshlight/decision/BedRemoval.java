package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;

/** States what beds take out of water, or what it carries after them where that is more. */
final class BedRemoval {

  private BedRemoval() {}

  /**
   * A reason about both substances in one wording.
   *
   * @param takes code of the sentence for beds that take both out
   * @param leaves code of the sentence for what the water still carries
   * @param bod5 share of the BOD5 that is taken out; negative where some is added
   * @param nitrogen share of the nitrogen that is taken out, likewise
   * @param others further names and values of the sentence
   */
  static Reason reason(
      String takes, String leaves, double bod5, double nitrogen, Object... others) {
    boolean takesBoth = bod5 >= 0 && nitrogen >= 0;
    List<Object> params = new ArrayList<>(List.of(others));
    params.addAll(
        List.of(
            "bodPercent",
            Part.percent(takesBoth ? bod5 : 1 - bod5),
            "nitrogenPercent",
            Part.percent(takesBoth ? nitrogen : 1 - nitrogen)));
    return Reason.of(takesBoth ? takes : leaves, params.toArray());
  }
}
