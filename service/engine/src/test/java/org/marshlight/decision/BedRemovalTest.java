package org.marshlight.decision;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BedRemovalTest {

  private static String told(double bod5, double nitrogen) {
    return BedRemoval.reason("decision.beds-remove", "decision.beds-leave", bod5, nitrogen).text();
  }

  @Test
  void bedsThatTakeBothOutAreSaidTo() {
    assertThat(told(0.72, 0)).contains("take 72 percent of the BOD5", "0 percent of the nitrogen");
  }

  /** Beds never take a negative amount out of water: what is left is reported instead. */
  @Test
  void bedsThatAddOneOfThemAreToldByWhatIsLeft() {
    assertThat(told(-0.68, 0.25))
        .contains("carries 168 percent of the BOD5", "75 percent of the nitrogen")
        .doesNotContain("-", "take");
    assertThat(told(0.25, -0.5)).contains("75 percent of the BOD5", "150 percent of the nitrogen");
  }
}
