package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against functions known in closed form. */
class EvenTableTest {

  @Test
  void straightLinesAreExactAndCurvesWithinAnEighthOfStepSquaredTimesCurvature() {
    EvenTable line = EvenTable.of(x -> 3 - 2 * x, -1, 4, 0.5);
    EvenTable square = EvenTable.of(x -> x * x, -1, 4, 0.5);
    for (double x = -1; x < 4; x += 0.013) {
      assertThat(line.at(x)).isCloseTo(3 - 2 * x, within(1e-12));
      assertThat(square.at(x)).isCloseTo(x * x, within(0.5 * 0.5 * 2 / 8 + 1e-12));
    }
  }

  @Test
  void beyondItsEndsItIsHeld() {
    EvenTable line = EvenTable.of(x -> 3 - 2 * x, -1, 4, 0.5);
    assertThat(line.at(-7)).isEqualTo(5);
    assertThat(line.at(9)).isCloseTo(-5, within(2e-3));
  }

  @Test
  void whatIsNoNumberStaysNone() {
    assertThat(EvenTable.of(x -> x, 0, 1, 0.5).at(Double.NaN)).isNaN();
  }
}
