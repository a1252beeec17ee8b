package org.marshlight.economy;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/** What an investment comes to that saves the same amount at the end of each year. */
public final class Investment {

  /** Internal rates are looked for between these. */
  private static final double LOWEST_RATE = -0.99;

  private static final double HIGHEST_RATE = 10;
  private static final double RATE_TOLERANCE = 1e-12;
  private static final int MOST_STEPS = 200;

  private Investment() {}

  /** Worth today of what is saved less what is spent. */
  @Formula(
      id = "economy.net-present-value",
      symbol = "NPV",
      expression = "S UPV* - I",
      unit = "1",
      meaning =
          "Worth today of a yearly saving at today's price that grows by e a year, less the"
              + " investment; payments at the ends of the years.",
      source = "nist-hb-135",
      equation = "net savings")
  public static double netPresentValue(
      @Argument(symbol = "I", unit = "1", min = 0, max = 1e12) double investment,
      @Argument(symbol = "S", unit = "1", min = -1e12, max = 1e12) double yearlySaving,
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "e", unit = "1", min = -0.2, max = 0.2) double growthRate,
      @Argument(symbol = "n", unit = "a", min = 0, max = 100) double years) {
    return yearlySaving * Discounting.escalated(discountRate, growthRate, years) - investment;
  }

  /** Discount rate at which the investment is just paid back over its life. */
  @Formula(
      id = "economy.internal-rate",
      symbol = "IRR",
      expression = "root d of S UPV(d, n) = I",
      unit = "1",
      meaning =
          "Rate at which a yearly saving over n years is worth the investment; has no value where"
              + " none from -0.99 to 10 does.",
      source = "nist-hb-135",
      equation = "internal rate of return, by root finder")
  public static double internalRate(
      @Argument(symbol = "I", unit = "1", min = 1e-9, max = 1e12) double investment,
      @Argument(symbol = "S", unit = "1", min = -1e12, max = 1e12) double yearlySaving,
      @Argument(symbol = "n", unit = "a", min = 0.01, max = 100) double years) {
    return rate(investment, yearlySaving, years).orElse(Double.NaN);
  }

  /** The internal rate, or empty where no rate pays the investment back. */
  public static OptionalDouble rate(double investment, double yearlySaving, double years) {
    if (!(worthOver(investment, yearlySaving, years, LOWEST_RATE) > 0)
        || !(worthOver(investment, yearlySaving, years, HIGHEST_RATE) < 0)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BrentSolver(RATE_TOLERANCE)
            .solve(
                MOST_STEPS,
                rate -> worthOver(investment, yearlySaving, years, rate),
                LOWEST_RATE,
                HIGHEST_RATE));
  }

  /** What is saved over what is invested, less one: has the sign of the net present value. */
  private static double worthOver(double investment, double saving, double years, double rate) {
    return saving * Discounting.uniform(rate, years) / investment - 1;
  }

  /** Years until what was saved has paid the investment back with interest. */
  @Formula(
      id = "economy.discounted-payback",
      symbol = "n_p",
      expression = "-ln(1 - I d / S) / ln(1 + d)",
      unit = "a",
      meaning =
          "Years until the discounted savings, each at the end of its year, equal the investment;"
              + " parts of a year by the same law. Has no value where they never do.",
      source = "nist-hb-135",
      equation = "discounted payback, solved for n")
  public static double discountedPaybackYears(
      @Argument(symbol = "I", unit = "1", min = 0, max = 1e12) double investment,
      @Argument(symbol = "S", unit = "1", min = -1e12, max = 1e12) double yearlySaving,
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate) {
    return payback(investment, yearlySaving, discountRate).orElse(Double.NaN);
  }

  /** The discounted payback, or empty where the investment is never paid back. */
  public static OptionalDouble payback(
      double investment, double yearlySaving, double discountRate) {
    if (investment <= 0) {
      return OptionalDouble.of(0);
    }
    if (yearlySaving <= 0) {
      return OptionalDouble.empty();
    }
    if (FastMath.abs(discountRate) < 1e-9) {
      return OptionalDouble.of(investment / yearlySaving);
    }
    double left = 1 - investment * discountRate / yearlySaving;
    return left > 0
        ? OptionalDouble.of(-FastMath.log(left) / FastMath.log1p(discountRate))
        : OptionalDouble.empty();
  }

  /** What a unit of energy costs over the life of what makes it. */
  @Formula(
      id = "economy.levelised-cost",
      symbol = "LCOE",
      expression = "(I + C UPV) / (Q UPV)",
      unit = "1/(kW.h)",
      meaning =
          "Investment and yearly costs over yearly energy, money and energy both discounted with"
              + " the payments at the ends of the years.",
      source = "nrel-tp-462-5173",
      equation = "levelised cost of energy")
  public static double levelisedCost(
      @Argument(symbol = "I", unit = "1", min = 0, max = 1e12) double investment,
      @Argument(symbol = "C", unit = "1", min = -1e12, max = 1e12) double yearlyCost,
      @Argument(symbol = "Q", unit = "kW.h", min = 1e-9, max = 1e12) double yearlyEnergyKWh,
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "n", unit = "a", min = 0.01, max = 100) double years) {
    double worth = Discounting.uniform(discountRate, years);
    return (investment + yearlyCost * worth) / (yearlyEnergyKWh * worth);
  }

  /** What useful heat costs. */
  @Formula(
      id = "economy.useful-energy-price",
      symbol = "p_u",
      expression = "p / eta",
      unit = "1/(kW.h)",
      meaning =
          "Price of useful heat from a fuel of price p, both per kWh, and stove efficiency eta.",
      source = "stove-comparisons",
      equation = "price over useful share")
  public static double usefulEnergyPrice(
      @Argument(symbol = "p", unit = "1/(kW.h)", min = 0, max = 1e6) double price,
      @Argument(symbol = "eta", unit = "1", min = 0.01, max = 1) double stoveEfficiency) {
    return price / stoveEfficiency;
  }
}
