package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Months;

/** Against the same days run one after the other until they repeat. */
class PeriodicSolidsTest {

  private static final int[] MONTH_OF_DAY = Months.monthOfDay();
  private static final double[] SETTLING = {3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5, 0};

  @Test
  void whatIsTakenAndPumpedComesToWhatManyPeriodsComeTo() {
    for (int years = 1; years <= 5; years++) {
      for (int desludgingDay : new int[] {0, 180, 364}) {
        assertThat(
                new PeriodicSolids(years, desludgingDay, 0.15)
                    .atStartOfLastYear(SETTLING, taken(), 0))
            .as("%s years, day %s", years, desludgingDay)
            .isCloseTo(run(years, desludgingDay, 0.15, true), within(1e-9));
        assertThat(
                new PeriodicSolids(years, desludgingDay, 0.15).atStartOfLastYear(SETTLING, null, 0))
            .isCloseTo(run(years, desludgingDay, 0.15, false), within(1e-9));
      }
    }
  }

  @Test
  void whereNothingIsTakenAndNothingPumpedThereIsNoLimit() {
    assertThat(new PeriodicSolids(3, 100, 1).atStartOfLastYear(SETTLING, null, 0)).isZero();
  }

  private static double[][] taken() {
    double[][] taken = new double[Months.DAYS_PER_YEAR][1];
    for (int day = 0; day < taken.length; day++) {
      taken[day][0] = 0.002 + 0.001 * (day % 7);
    }
    return taken;
  }

  private static double run(int years, int desludgingDay, double seed, boolean isTaken) {
    double[] left = new double[Months.DAYS_PER_YEAR];
    double[][] taken = taken();
    Arrays.setAll(left, day -> isTaken ? 1 - taken[day][0] : 1);
    double solids = 0;
    double atStart = 0;
    for (int period = 0; period < 40; period++) {
      for (int year = 0; year < years; year++) {
        if (year == years - 1) {
          atStart = solids;
        }
        for (int day = 0; day < left.length; day++) {
          solids = left[day] * (solids + SETTLING[MONTH_OF_DAY[day]]);
          if (year == years - 1 && day == desludgingDay) {
            solids *= seed;
          }
        }
      }
    }
    return atStart;
  }
}
