package org.marshlight.economy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.economy.AppraisalEstimate.Sign;
import org.marshlight.economy.AppraisalEstimate.Swing;

/**
 * Appraisals against payments that are written out year by year, as the definitions of net present
 * value, discounted payback and levelised cost have it: an invented plant of 1000 that saves fuel
 * for 150 and fertiliser for 30 a year and costs 20, at 5 percent, with fuel growing by 2 percent,
 * over 10 years in each of which 5 percent of the working plants fail.
 */
class AppraisalTest {

  private static final double INVESTMENT = 1000;
  private static final double ENERGY = 150;
  private static final double OTHER = 30;
  private static final double CARE = 20;
  private static final double ENERGY_KWH = 900;
  private static final double RATE = 0.05;
  private static final double GROWTH = 0.02;
  private static final double FAILING = 0.05;
  private static final int LIFE = 10;

  private static final AppraisalEstimate WORKED =
      Appraisal.of(
          INVESTMENT, new YearlyMoney(ENERGY, OTHER, CARE), ENERGY_KWH, terms(RATE, GROWTH, LIFE));

  private static FinanceTerms terms(double rate, double growth, double life) {
    return new FinanceTerms(rate, growth, life, new FinanceCoefficients(FAILING, 0.3, 0.3));
  }

  private static double sum(int years, IntToDoubleFunction ofYear) {
    double sum = 0;
    for (int year = 1; year <= years; year++) {
      sum += ofYear.applyAsDouble(year);
    }
    return sum;
  }

  /** Worth today of a payment that falls at the end of a year. */
  private static double today(double amount, double rate, int year) {
    return amount / Math.pow(1 + rate, year);
  }

  private static double netOf(int year, double priceFactor) {
    return ENERGY * priceFactor * Math.pow(1 + GROWTH, year) + OTHER - CARE;
  }

  @Test
  void netPresentValueIsTheSumOfAllDiscountedPayments() {
    double worth = sum(LIFE, year -> today(netOf(year, 1), RATE, year)) - INVESTMENT;
    assertThat(WORKED.netPresentValue()).isCloseTo(worth, within(1e-9));
    assertThat(WORKED.netPresentValue()).isCloseTo(360.60, within(0.005));
  }

  @Test
  void theExpectedValueWeighsEachYearWithWhatStillWorks() {
    double worth =
        sum(LIFE, year -> Math.pow(1 - FAILING, year) * today(netOf(year, 1), RATE, year))
            - INVESTMENT;
    assertThat(WORKED.expectedNetPresentValue()).isCloseTo(worth, within(1e-9));
    assertThat(WORKED.expectedNetPresentValue()).isCloseTo(50.49, within(0.005));
  }

  @Test
  void itIsPaidBackInTheYearInWhichTheSumTurns() {
    int full = (int) Math.floor(WORKED.discountedPaybackYears());
    assertThat(sum(full, year -> today(netOf(year, 1), RATE, year))).isLessThan(INVESTMENT);
    assertThat(sum(full + 1, year -> today(netOf(year, 1), RATE, year))).isGreaterThan(INVESTMENT);
    assertThat(WORKED.neverPays()).isFalse();
  }

  @Test
  void atTheInternalRateNothingIsLeft() {
    double rate = WORKED.internalRate();
    assertThat(sum(LIFE, year -> today(netOf(year, 1), rate, year)))
        .isCloseTo(INVESTMENT, within(1e-4));
  }

  @Test
  void levelisedCostIsAllMoneyOverAllEnergyBothDiscounted() {
    double money =
        INVESTMENT
            + sum(LIFE, year -> Math.pow(1 - FAILING, year) * today(CARE - OTHER, RATE, year));
    double energy = sum(LIFE, year -> Math.pow(1 - FAILING, year) * today(ENERGY_KWH, RATE, year));
    assertThat(WORKED.levelisedCostPerKWh()).isCloseTo(money / energy, within(1e-12));
    assertThat(WORKED.levelisedCostPerKWh()).isCloseTo(0.17383, within(0.00001));
  }

  @Test
  void theSwingsMovePriceAndLifeByThirtyPercent() {
    assertThat(WORKED.swings())
        .extracting(Swing::priceFactor)
        .containsExactlyInAnyOrder(0.7, 0.7, 1.3, 1.3);
    for (Swing swing : WORKED.swings()) {
      assertThat(swing.lifeYears()).isIn(7.0, 13.0);
      double worth =
          sum(
                  (int) swing.lifeYears(),
                  year ->
                      Math.pow(1 - FAILING, year)
                          * today(netOf(year, swing.priceFactor()), RATE, year))
              - INVESTMENT;
      assertThat(swing.expectedNetPresentValue()).isCloseTo(worth, within(1e-9));
    }
    assertThat(WORKED.sign()).isEqualTo(Sign.UNSURE);
  }

  /** Only a plant whose value is not negative in any swing pays. */
  @Test
  void theSignIsThatOfTheWorstAndTheBestSwing() {
    Random random = new Random(20261201);
    Map<Sign, Integer> seen = new EnumMap<>(Sign.class);
    for (int i = 0; i < 500; i++) {
      AppraisalEstimate estimate = random(random, random.nextDouble() * 0.06 - 0.02);
      double least = estimate.expectedNetPresentValue();
      double most = least;
      for (Swing swing : estimate.swings()) {
        least = Math.min(least, swing.expectedNetPresentValue());
        most = Math.max(most, swing.expectedNetPresentValue());
      }
      assertThat(estimate.sign())
          .isEqualTo(least > 0 ? Sign.PAYS : most < 0 ? Sign.DOES_NOT_PAY : Sign.UNSURE);
      seen.merge(estimate.sign(), 1, Integer::sum);
    }
    assertThat(seen).hasSize(3).allSatisfy((sign, times) -> assertThat(times).isGreaterThan(20));
  }

  @Test
  void growingFuelPricesNeverLowerTheValueOfAFuelSaver() {
    for (int seed = 0; seed < 200; seed++) {
      AppraisalEstimate before = null;
      for (double growth = -0.03; growth < 0.08; growth += 0.02) {
        AppraisalEstimate estimate = random(new Random(seed), growth);
        if (before != null) {
          assertThat(estimate.netPresentValue()).isGreaterThan(before.netPresentValue());
          assertThat(estimate.expectedNetPresentValue())
              .isGreaterThan(before.expectedNetPresentValue());
        }
        before = estimate;
      }
    }
  }

  @Test
  void itIsPaidBackWithinItsLifeIfItsValueIsNotNegative() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      AppraisalEstimate estimate = random(random, 0.01);
      assertThat(estimate.neverPays()).isEqualTo(estimate.netPresentValue() < 0);
      assertThat(estimate.discountedPaybackYears() == null).isEqualTo(estimate.neverPays());
    }
  }

  /** An invented fuel saver that earns something in every year. */
  private static AppraisalEstimate random(Random random, double growth) {
    double energy = 20 + random.nextDouble() * 300;
    double other = random.nextDouble() * 100;
    return Appraisal.of(
        100 + random.nextDouble() * 2500,
        new YearlyMoney(energy, other, other * random.nextDouble()),
        900,
        terms(random.nextDouble() * 0.12, growth, 3 + random.nextDouble() * 30));
  }
}
