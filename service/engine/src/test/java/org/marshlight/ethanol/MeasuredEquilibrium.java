package org.marshlight.ethanol;

/**
 * Carey and Lewis 1932, Studies in distillation: seventeen measured points of ethanol and water at
 * one atmosphere, as tabled in handbooks (mole fraction in the liquid, in the vapour).
 */
final class MeasuredEquilibrium {

  static final double[][] POINTS = {
    {0, 0},
    {0.0190, 0.1700},
    {0.0721, 0.3891},
    {0.0966, 0.4375},
    {0.1238, 0.4704},
    {0.1661, 0.5089},
    {0.2337, 0.5445},
    {0.2608, 0.5580},
    {0.3273, 0.5826},
    {0.3965, 0.6122},
    {0.5079, 0.6564},
    {0.5198, 0.6599},
    {0.5732, 0.6841},
    {0.6763, 0.7385},
    {0.7472, 0.7815},
    {0.8943, 0.8943},
    {1, 1}
  };

  private MeasuredEquilibrium() {}

  /** Vapour by relative volatility, whose logarithm is straight between the measured points. */
  static double vapour(double x) {
    int upper = 2;
    while (POINTS[upper][0] < x) {
      upper++;
    }
    double low = volatility(upper - 1);
    double high = volatility(upper);
    double share = (x - POINTS[upper - 1][0]) / (POINTS[upper][0] - POINTS[upper - 1][0]);
    double volatility = low * Math.pow(high / low, share);
    return volatility * x / (1 + (volatility - 1) * x);
  }

  private static double volatility(int i) {
    double x = POINTS[i][0];
    double y = POINTS[i][1];
    return y * (1 - x) / (x * (1 - y));
  }
}
