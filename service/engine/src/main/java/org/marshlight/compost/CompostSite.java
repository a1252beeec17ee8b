package org.marshlight.compost;

import java.util.List;
import org.marshlight.contract.Months;

/**
 * What the heap must know of its site.
 *
 * @param airTemperatureC mean air temperature of each month, January first
 */
public record CompostSite(List<Double> airTemperatureC) {

  /**
   * Month in which a heap is built, 0 = January: the last, counted from the warmest, that is no
   * colder than the year's mean, when tops and tubers have been cut.
   */
  int autumnMonth() {
    double mean = meanC();
    int month = warmestMonth();
    for (int later = 1; later < Months.COUNT; later++) {
      int next = (month + 1) % Months.COUNT;
      if (airTemperatureC.get(next) < mean) {
        return month;
      }
      month = next;
    }
    return warmestMonth();
  }

  /** The warmest month, 0 = January. */
  int warmestMonth() {
    int warmest = 0;
    for (int month = 1; month < Months.COUNT; month++) {
      warmest = airTemperatureC.get(month) > airTemperatureC.get(warmest) ? month : warmest;
    }
    return warmest;
  }

  /** Mean of the year, Cel. */
  double meanC() {
    return Months.mean(Months.array(airTemperatureC));
  }
}
