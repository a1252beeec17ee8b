package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against series whose limits are known by hand. */
class PeriodicLimitTest {

  @Test
  void geometricSeriesIsPutAtItsSumAfterTwoPeriods() {
    PeriodicLimit limit = new PeriodicLimit(1);
    double state = 0;
    for (int period = 0; period < 2; period++) {
      state = 0.1 * (limit.next(new double[] {state})[0] + 9);
    }

    assertThat(limit.next(new double[] {state})[0]).isCloseTo(1, within(1e-15));
  }

  @Test
  void whatDoesNotConvergeOrStandsStillIsLeftAlone() {
    PeriodicLimit limit = new PeriodicLimit(3);
    limit.next(new double[] {1, 1, 7});
    limit.next(new double[] {2, 3, 7});

    assertThat(limit.next(new double[] {3, 7, 7})).containsExactly(3, 7, 7);
  }
}
