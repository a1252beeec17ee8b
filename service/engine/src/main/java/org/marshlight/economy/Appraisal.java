package org.marshlight.economy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Appraises an investment that saves and costs money every year: payments at the ends of the years,
 * at real prices, energy growing with the price of fuel.
 */
public final class Appraisal {

  private static final double LOWEST_RATE = -0.9;
  private static final double HIGHEST_RATE = 10;
  private static final double TOLERANCE = 1e-10;
  private static final int MOST_STEPS = 300;

  private final double investment;
  private final YearlyMoney yearly;
  private final FinanceTerms terms;

  private Appraisal(double investment, YearlyMoney yearly, FinanceTerms terms) {
    this.investment = investment;
    this.yearly = yearly;
    this.terms = terms;
  }

  /**
   * What an investment comes to.
   *
   * @param investment what is to be paid at the start, credits taken off; may be below nought
   * @param yearly money of a year
   * @param energyKWh useful energy of a year, for the levelised cost; nought or less for none
   * @param terms the terms
   */
  public static AppraisalEstimate of(
      double investment, YearlyMoney yearly, double energyKWh, FinanceTerms terms) {
    return new Appraisal(investment, yearly, terms).estimate(energyKWh);
  }

  private AppraisalEstimate estimate(double energyKWh) {
    double life = terms.lifeYears();
    double expected = expectedWorth(1, life);
    List<AppraisalEstimate.Swing> swings = swings();
    OptionalDouble payback = paybackYears();
    return new AppraisalEstimate(
        investment,
        yearly.energy(),
        yearly.other(),
        yearly.care(),
        worth(yearly, terms.discountRate(), life),
        expected,
        orNull(internalRate()),
        orNull(payback),
        payback.isEmpty(),
        energyKWh > 0 && investment >= 0
            ? Investment.levelisedCost(
                investment,
                yearly.care() - yearly.other(),
                energyKWh,
                terms.rateWithFailure(),
                life)
            : null,
        swings,
        sign(expected, swings));
  }

  /** Worth of a year's money over some years, less the investment. */
  private double worth(YearlyMoney money, double rate, double years) {
    return money.energy() * Discounting.escalated(rate, terms.fuelPriceGrowth(), years)
        + (money.other() - money.care()) * Discounting.uniform(rate, years)
        - investment;
  }

  private double expectedWorth(double priceFactor, double years) {
    return worth(yearly.atPrice(priceFactor), terms.rateWithFailure(), years);
  }

  private List<AppraisalEstimate.Swing> swings() {
    double price = terms.coefficients().priceSwing();
    double life = terms.coefficients().lifeSwing();
    List<AppraisalEstimate.Swing> swings = new ArrayList<>();
    for (double priceFactor : new double[] {1 - price, 1 + price}) {
      for (double lifeFactor : new double[] {1 - life, 1 + life}) {
        double years = terms.lifeYears() * lifeFactor;
        swings.add(
            new AppraisalEstimate.Swing(priceFactor, years, expectedWorth(priceFactor, years)));
      }
    }
    return List.copyOf(swings);
  }

  private static AppraisalEstimate.Sign sign(
      double expected, List<AppraisalEstimate.Swing> swings) {
    double least = expected;
    double most = expected;
    for (AppraisalEstimate.Swing swing : swings) {
      least = Math.min(least, swing.expectedNetPresentValue());
      most = Math.max(most, swing.expectedNetPresentValue());
    }
    if (most <= 0) {
      return AppraisalEstimate.Sign.DOES_NOT_PAY;
    }
    return least >= 0 ? AppraisalEstimate.Sign.PAYS : AppraisalEstimate.Sign.UNSURE;
  }

  /** The rate at which the plant as planned is just worth its cost; empty without one. */
  private OptionalDouble internalRate() {
    if (investment <= 0) {
      return OptionalDouble.empty();
    }
    return root(
        rate -> worth(yearly, rate, terms.lifeYears()) / investment, LOWEST_RATE, HIGHEST_RATE);
  }

  /** Years of the plant as planned until it has paid itself back, or empty within its life. */
  private OptionalDouble paybackYears() {
    if (investment <= 0) {
      return OptionalDouble.of(0);
    }
    UnivariateFunction worth = years -> worth(yearly, terms.discountRate(), years) / investment;
    double last = terms.lifeYears();
    for (double from = 0; from < last; from++) {
      double to = Math.min(last, from + 1);
      if (worth.value(to) >= 0) {
        return root(worth, from, to);
      }
    }
    return OptionalDouble.empty();
  }

  private static OptionalDouble root(UnivariateFunction function, double low, double high) {
    double atLow = function.value(low);
    double atHigh = function.value(high);
    if (!(atLow * atHigh <= 0) || !Double.isFinite(atLow) || !Double.isFinite(atHigh)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(new BrentSolver(TOLERANCE).solve(MOST_STEPS, function, low, high));
  }

  private static Double orNull(OptionalDouble value) {
    return value.isPresent() ? Double.valueOf(value.getAsDouble()) : null;
  }
}
