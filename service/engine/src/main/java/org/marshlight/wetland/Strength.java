package org.marshlight.wetland;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.marshlight.contract.Months;
import org.marshlight.feed.WaterStream;

/** Concentrations of a stream. */
final class Strength {

  private Strength() {}

  /** Concentration of a mass in a month's water; not a number where there is none. */
  static double mgL(double kg, WaterStream stream, int month) {
    double volume = stream.volumeM3(month);
    return volume > 0 ? 1000 * kg / volume : Double.NaN;
  }

  /** Concentration in each month; null in one without flow. */
  static List<Double> mgL(WaterStream stream, IntToDoubleFunction kg) {
    double[] values = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      values[month] = mgL(kg.applyAsDouble(month), stream, month);
    }
    return Months.list(values);
  }

  /** Flow-weighted mean over the year; null without flow. */
  static Double meanMgL(WaterStream stream, IntToDoubleFunction kg) {
    double volume = stream.annualVolumeM3();
    return volume > 0 ? 1000 * sum(kg) / volume : null;
  }

  /** Share of a mass that is gone; null if none came. */
  static Double removed(IntToDoubleFunction inKg, IntToDoubleFunction outKg) {
    double in = sum(inKg);
    return in > 0 ? 1 - sum(outKg) / in : null;
  }

  static double sum(IntToDoubleFunction monthly) {
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      sum += monthly.applyAsDouble(month);
    }
    return sum;
  }
}
