package org.marshlight.feed;

import java.util.List;
import org.marshlight.contract.Months;

/**
 * One kind of waste that enters a tank.
 *
 * @param name what it is
 * @param from party of the loop that brings it
 * @param human whether it comes from people's own bodies and washing
 * @param perDay matter that enters on each day of each month
 * @param digestibility how it behaves in the tank
 */
public record Waste(
    String name, String from, boolean human, List<Matter> perDay, Digestibility digestibility) {

  /** Matter that enters in a year. */
  public Matter annual() {
    Matter sum = Matter.NONE;
    for (int month = 0; month < Months.COUNT; month++) {
      sum = sum.plus(perDay.get(month).times(Months.days(month)));
    }
    return sum;
  }
}
