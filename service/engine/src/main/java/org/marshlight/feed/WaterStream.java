package org.marshlight.feed;

import java.util.List;
import org.marshlight.contract.Months;

/**
 * Water and what it carries, month by month.
 *
 * @param monthly matter that flows in each month
 * @param bod5Kg five-day biochemical oxygen demand in each month, kg
 * @param suspendedSolidsKg suspended solids in each month, kg
 * @param faecalColiformsPer100ML density in each month
 * @param temperatureC temperature in each month
 * @param humanOrigin whether any of it comes from human excreta
 */
public record WaterStream(
    List<Matter> monthly,
    double[] bod5Kg,
    double[] suspendedSolidsKg,
    double[] faecalColiformsPer100ML,
    double[] temperatureC,
    boolean humanOrigin) {

  /** Volume in a month, m3, at 1000 kg/m3. */
  public double volumeM3(int month) {
    return monthly.get(month).waterKg() / 1000;
  }

  /** Volume in the year, m3. */
  public double annualVolumeM3() {
    double sum = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      sum += volumeM3(month);
    }
    return sum;
  }

  /** Matter in the year. */
  public Matter annual() {
    return Matter.sum(monthly);
  }
}
