package org.marshlight.study;

import java.util.List;
import org.marshlight.digester.DigesterEstimate;

/** What can be read at a tank month by month. */
public enum ReadingKind {
  /** Mean temperature of the liquor. */
  LIQUOR_TEMPERATURE("Cel", "/digester/monthly/liquorTemperatureC", -20, 100),
  /** Gas through the meter in the month, wet and at the store's state. */
  METERED_GAS("m3", "/digester/monthly/meteredGasM3", 0, 1e6);

  private final String unit;
  private final String pointer;
  private final double low;
  private final double high;

  ReadingKind(String unit, String pointer, double low, double high) {
    this.unit = unit;
    this.pointer = pointer;
    this.low = low;
    this.high = high;
  }

  /** UCUM code. */
  public String unit() {
    return unit;
  }

  /** Pointer to the months of the figure in an estimate. */
  String pointer() {
    return pointer;
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }

  /** What a tank's model gives for a month, 1 = January. */
  double modelled(DigesterEstimate estimate, int month) {
    List<Double> months =
        this == LIQUOR_TEMPERATURE
            ? estimate.monthly().liquorTemperatureC()
            : estimate.monthly().meteredGasM3();
    return months.get(month - 1);
  }
}
