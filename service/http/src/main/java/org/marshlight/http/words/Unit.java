package org.marshlight.http.words;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit in which a number of the contract is shown: {@code shown = number * times / over +
 * offset}. The factors of US customary units are those of their definitions, so that nothing is
 * lost on the way there and back.
 *
 * @param ucum UCUM code of the unit shown
 * @param printed the unit as people write it
 * @param times numerator of the factor
 * @param over denominator of the factor
 * @param offset what is added
 */
public record Unit(String ucum, String printed, double times, double over, double offset) {

  private static final MathContext DIGITS = new MathContext(12);

  /** A unit shown as it is. */
  static Unit same(String ucum, String printed) {
    return new Unit(ucum, printed, 1, 1, 0);
  }

  /** Whether numbers stand as they are in the contract. */
  public boolean unchanged() {
    return times == 1 && over == 1 && offset == 0;
  }

  /** A number of the contract in this unit, without the rounding of binary fractions. */
  public double of(double number) {
    return unchanged() || Double.isNaN(number) || Double.isInfinite(number)
        ? number
        : new BigDecimal(number * times / over + offset).round(DIGITS).doubleValue();
  }
}
