package org.marshlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against series whose limits are known by hand. */
class PeriodicLimitTest {

  @Test
  void geometricSeriesIsPutAtItsSumAfterTwoPeriods() {
    PeriodicLimit limit = new PeriodicLimit(1, 1.5);
    double state = 0;
    for (int period = 0; period < 2; period++) {
      state = 0.1 * (limit.next(new double[] {state})[0] + 9);
    }

    assertThat(limit.next(new double[] {state})[0]).isCloseTo(1, within(1e-15));
  }

  @Test
  void threeNumbersThatHangOnEachOtherAreThereAfterFour() {
    double[][] share = {{0.5, 0.2, 0}, {0.1, 0.6, 0.2}, {0.3, 0, 0.3}};
    double[] sought = {2, 3, 5};
    double[] comes = new double[3];
    for (int i = 0; i < 3; i++) {
      comes[i] = sought[i] - of(share[i], sought);
    }
    PeriodicLimit limit = new PeriodicLimit(3, 1.5);
    double[] state = {2.5, 2.8, 4.4};
    for (int period = 0; period < 4; period++) {
      double[] start = limit.next(state);
      for (int i = 0; i < 3; i++) {
        state[i] = comes[i] + of(share[i], start);
      }
    }

    double[] reached = limit.next(state);
    for (int i = 0; i < 3; i++) {
      assertThat(reached[i]).isCloseTo(sought[i], within(1e-12));
    }
  }

  @Test
  void whatStandsStillIsLeftAlone() {
    PeriodicLimit limit = new PeriodicLimit(2, 1.5);
    limit.next(new double[] {7, 0});
    limit.next(new double[] {7, 0});

    assertThat(limit.next(new double[] {7, 0})).containsExactly(7, 0);
  }

  @Test
  void whatFadesToNothingGoesOnByItself() {
    PeriodicLimit limit = new PeriodicLimit(1, 1.5);
    double[] state = {1};
    for (int period = 0; period < 5; period++) {
      state = new double[] {0.9 * limit.next(state)[0]};
    }

    assertThat(limit.next(state)[0]).isEqualTo(state[0]).isLessThan(0.6);
  }

  private static double of(double[] shares, double[] state) {
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      sum += shares[i] * state[i];
    }
    return sum;
  }
}
