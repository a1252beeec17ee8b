package org.marshlight.economy;

import org.apache.commons.math3.util.FastMath;
import org.marshlight.evidence.Argument;
import org.marshlight.evidence.Formula;

/**
 * Worth today of money that comes later. Rates and growth are real, as fractions a year. The plans'
 * convention is the end of the year: the first yearly amount comes one year after building. The
 * other conventions in use stand beside it, since they differ by several percent.
 */
public final class Discounting {

  /** Rates nearer than this to nought, or to each other, are taken as equal. */
  private static final double SAME = 1e-9;

  private Discounting() {}

  /** Worth of one amount that comes after some years. */
  @Formula(
      id = "economy.single-present-worth",
      symbol = "SPV",
      expression = "(1 + d)^-t",
      unit = "1",
      meaning = "Worth today of one unit of money that comes after t years.",
      source = "nist-hb-135",
      equation = "SPV")
  public static double single(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "t", unit = "a", min = 0, max = 100) double years) {
    return FastMath.pow(1 + discountRate, -years);
  }

  /** Worth of an amount that grows yearly, paid once, its first payment not grown. */
  @Formula(
      id = "economy.grown-payment",
      symbol = "A_n",
      expression = "A (1 + i)^(n - 1)",
      unit = "1",
      meaning = "The n-th payment of a series whose first is A and that grows by i a year.",
      source = "solar-economics-course",
      equation = "worked example")
  public static double grownPayment(
      @Argument(symbol = "A", unit = "1", min = -1e12, max = 1e12) double firstPayment,
      @Argument(symbol = "i", unit = "1", min = -0.2, max = 0.2) double growthRate,
      @Argument(symbol = "n", unit = "1", min = 1, max = 100) double payment) {
    return firstPayment * FastMath.pow(1 + growthRate, payment - 1);
  }

  /** Worth of the same amount at the end of each year. */
  @Formula(
      id = "economy.uniform-present-worth",
      symbol = "UPV",
      expression = "(1 - (1 + d)^-n) / d",
      unit = "1",
      meaning = "Worth today of one unit of money at the end of each of n years.",
      source = "nist-hb-135",
      equation = "UPV")
  public static double uniform(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "n", unit = "a", min = 0, max = 100) double years) {
    return FastMath.abs(discountRate) < SAME
        ? years
        : -FastMath.expm1(-years * FastMath.log1p(discountRate)) / discountRate;
  }

  /** Worth of an amount that grows from today's prices on. */
  @Formula(
      id = "economy.escalated-present-worth",
      symbol = "UPV*",
      expression = "sum over t = 1..n of ((1 + e) / (1 + d))^t",
      unit = "1",
      meaning =
          "Worth today of one unit of money, at today's price, at the end of each of n years when"
              + " its price grows by e a year.",
      source = "nist-hb-135",
      equation = "UPV*")
  public static double escalated(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "e", unit = "1", min = -0.2, max = 0.2) double growthRate,
      @Argument(symbol = "n", unit = "a", min = 0, max = 100) double years) {
    return uniform((1 + discountRate) / (1 + growthRate) - 1, years);
  }

  /** The same with the first payment not grown. */
  @Formula(
      id = "economy.inflating-present-worth",
      symbol = "PWF",
      expression = "(1 - ((1 + i) / (1 + d))^n) / (d - i)",
      unit = "1",
      meaning =
          "Worth today of payments at the end of each of n years that grow by i a year, for each"
              + " unit of the first.",
      source = "duffie-beckman",
      equation = "present worth factor of an inflating series")
  public static double inflating(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "i", unit = "1", min = -0.2, max = 0.2) double growthRate,
      @Argument(symbol = "n", unit = "a", min = 0, max = 100) double years) {
    return escalated(discountRate, growthRate, years) / (1 + growthRate);
  }

  /** The same for money that flows all the time. */
  @Formula(
      id = "economy.continuous-present-worth",
      symbol = "PW_c",
      expression = "(1 - r^n) / ln(1 / r), r = (1 + e) / (1 + d)",
      unit = "1",
      meaning =
          "Worth today of money that flows evenly through n years, one unit a year at today's"
              + " price, when that price grows by e a year.",
      source = "mil-hdbk-1003-13a",
      equation = "pp. 110 to 111, table of 25 years")
  public static double continuous(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "e", unit = "1", min = -0.2, max = 0.2) double growthRate,
      @Argument(symbol = "n", unit = "a", min = 0, max = 100) double years) {
    double force = FastMath.log1p(discountRate) - FastMath.log1p(growthRate);
    return FastMath.abs(force) < SAME ? years : -FastMath.expm1(-force * years) / force;
  }

  /** Yearly amount that pays back one unit of money. */
  @Formula(
      id = "economy.capital-recovery",
      symbol = "CRF",
      expression = "1 / UPV",
      unit = "1",
      meaning = "Amount at the end of each of n years that is worth one unit of money today.",
      source = "nist-hb-135",
      equation = "CRF")
  public static double capitalRecovery(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "n", unit = "a", min = 0.01, max = 100) double years) {
    return 1 / uniform(discountRate, years);
  }

  /** Rate without inflation. */
  @Formula(
      id = "economy.real-rate",
      symbol = "d",
      expression = "(1 + d_n) / (1 + i) - 1",
      unit = "1",
      meaning = "Real discount rate of a nominal one when money loses i of its worth a year.",
      source = "nist-hb-135",
      equation = "real and nominal rates")
  public static double realRate(
      @Argument(symbol = "d_n", unit = "1", min = -0.2, max = 10) double nominalRate,
      @Argument(symbol = "i", unit = "1", min = -0.2, max = 10) double inflation) {
    return (1 + nominalRate) / (1 + inflation) - 1;
  }

  /** Share of plants still at work after some years. */
  @Formula(
      id = "economy.still-working",
      symbol = "S",
      expression = "(1 - p)^t",
      unit = "1",
      meaning =
          "Probability that a plant still works after t years when p of those left fail a year.",
      source = "bond-templeton-2011",
      equation = "form assumed; see the coefficient")
  public static double stillWorking(
      @Argument(symbol = "p", unit = "1", min = 0, max = 0.99) double failingShare,
      @Argument(symbol = "t", unit = "a", min = 0, max = 100) double years) {
    return FastMath.pow(1 - failingShare, years);
  }

  /** Discount rate that weighs each year with the probability that the plant still works. */
  @Formula(
      id = "economy.rate-with-failure",
      symbol = "d_p",
      expression = "(1 + d) / (1 - p) - 1",
      unit = "1",
      meaning =
          "Discount rate under which yearly amounts are weighed with the probability that the plant"
              + " still works.",
      source = "common-practice",
      equation = "from (1 - p)^t (1 + d)^-t = (1 + d_p)^-t")
  public static double rateWithFailure(
      @Argument(symbol = "d", unit = "1", min = -0.2, max = 10) double discountRate,
      @Argument(symbol = "p", unit = "1", min = 0, max = 0.99) double failingShare) {
    return (1 + discountRate) / (1 - failingShare) - 1;
  }
}
