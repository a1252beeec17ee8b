package org.marshlight.wetland;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.util.FastMath;

/**
 * Temperature of water along a bed as it comes towards its surroundings, for means of rates that
 * grow with warmth. The mean rate, not the rate at the mean, is what a bed does: so a longer bed
 * never does less for having cooler water at its far end.
 *
 * @param temperatureC temperatures at fixed steps of heat exchange
 * @param weight weight of each, summing to one
 */
record WarmthAlongBed(double[] temperatureC, double[] weight) {

  /** Steps of heat exchange, closer where water changes fastest; beyond the last it is settled. */
  private static final double[] STEPS = {0, 0.25, 0.5, 1, 1.5, 2, 3, 4, 6, 8};

  private static final double[] DECAY = decay();

  private static double[] decay() {
    double[] decay = new double[STEPS.length];
    for (int i = 0; i < decay.length - 1; i++) {
      decay[i] = FastMath.exp(-STEPS[i]);
    }
    return decay;
  }

  /** The same temperature all along. */
  static WarmthAlongBed even(double temperatureC) {
    return new WarmthAlongBed(new double[] {temperatureC}, new double[] {1});
  }

  /**
   * Water that enters and flows through.
   *
   * @param inflowC temperature at the inlet
   * @param surroundingsC what it tends to
   * @param exchange heat exchange number of the whole bed
   */
  static WarmthAlongBed of(double inflowC, double surroundingsC, double exchange) {
    if (exchange <= 0) {
      return even(inflowC);
    }
    double[] temperature = new double[STEPS.length];
    double[] weight = new double[STEPS.length];
    for (int i = 0; i < STEPS.length; i++) {
      temperature[i] = surroundingsC + (inflowC - surroundingsC) * DECAY[i];
    }
    for (int i = 0; i + 1 < STEPS.length && STEPS[i] < exchange; i++) {
      double step = STEPS[i + 1] - STEPS[i];
      double covered = Math.min(step, exchange - STEPS[i]);
      double later = covered * covered / (2 * step);
      weight[i] += (covered - later) / exchange;
      weight[i + 1] += later / exchange;
    }
    double settled = Math.max(0, exchange - STEPS[STEPS.length - 1]);
    weight[STEPS.length - 1] += settled / exchange;
    return new WarmthAlongBed(temperature, weight);
  }

  /** Mean over the bed of what depends on temperature. */
  double mean(DoubleUnaryOperator ofTemperature) {
    double sum = 0;
    for (int i = 0; i < weight.length; i++) {
      if (weight[i] > 0) {
        sum += weight[i] * ofTemperature.applyAsDouble(temperatureC[i]);
      }
    }
    return sum;
  }

  /** Mean rate of a process with a temperature factor. */
  double meanRate(double rateAt20, double theta) {
    return theta == 1 ? rateAt20 : mean(t -> TanksInSeries.rateAtTemperature(rateAt20, theta, t));
  }
}
