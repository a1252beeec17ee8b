package org.marshlight;

import java.util.List;
import org.marshlight.safety.Caution;

/** The rule that nothing is answered without cautions. */
final class Cautioned {

  private Cautioned() {}

  /**
   * The cautions, if there are any.
   *
   * @throws IllegalArgumentException if there are none
   */
  static List<Caution> required(List<Caution> cautions) {
    if (cautions == null || cautions.isEmpty()) {
      throw new IllegalArgumentException("nothing is answered without cautions");
    }
    return List.copyOf(cautions);
  }
}
