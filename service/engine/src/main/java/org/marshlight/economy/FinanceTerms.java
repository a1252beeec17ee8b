package org.marshlight.economy;

import org.marshlight.evidence.CoefficientSet;

/**
 * The terms under which investments of one plan are appraised.
 *
 * @param discountRate real rate a year
 * @param fuelPriceGrowth real growth of fuel prices a year
 * @param lifeYears years over which they are judged
 * @param coefficients failure and swings
 */
public record FinanceTerms(
    double discountRate,
    double fuelPriceGrowth,
    double lifeYears,
    FinanceCoefficients coefficients) {

  /** Terms of a money section with its defaults filled. */
  public static FinanceTerms of(MoneyDesign money, CoefficientSet set) {
    return new FinanceTerms(
        money.discountRate(),
        money.fuelPriceGrowth(),
        money.lifeYears(),
        set.bind(FinanceCoefficients.class));
  }

  /** The rate under which what depends on a working plant is weighed with its probability. */
  double rateWithFailure() {
    return Discounting.rateWithFailure(discountRate, coefficients.failingShare());
  }
}
