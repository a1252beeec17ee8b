package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.WireName;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.economy.FinanceCoefficients;
import org.marshlight.economy.Investment;
import org.marshlight.economy.MoneyDesign;

/** Tells an appraisal in sentences. */
final class MoneyReasons {

  private static final String PREFIX = "decision.money-";

  private MoneyReasons() {}

  /** Whether a reason is one of these. */
  static boolean isOne(String code) {
    return code.startsWith(PREFIX);
  }

  /** What sums are told in. */
  static String currency(MoneyDesign money) {
    return money.currency() == null ? "units of money" : money.currency();
  }

  /** What an appraisal says, the strongest first. */
  static List<Reason> of(AppraisalEstimate money, Comparisons basis) {
    List<Reason> reasons = new ArrayList<>();
    MoneyDesign terms = basis.money();
    String currency = currency(terms);
    reasons.add(worth(money, terms, currency));
    reasons.add(sign(money, basis, currency));
    if (money.investment() > 0) {
      reasons.add(payback(money, terms));
    }
    if (money.levelisedCostPerKWh() != null
        && money.levelisedCostPerKWh() > 0
        && terms.fuelPricePerKWh() != null
        && !basis.effects(basis.plan()).service().sparesElectricityAlone()) {
      reasons.add(
          Reason.of(
              PREFIX + "levelised",
              "costPerKWh",
              money.levelisedCostPerKWh(),
              "currency",
              currency,
              "pricePerKWh",
              Investment.usefulEnergyPrice(
                  terms.fuelPricePerKWh(), basis.displaced().stoveEfficiency()),
              "fuel",
              terms.displacedFuel()));
    }
    return reasons;
  }

  private static Reason worth(AppraisalEstimate money, MoneyDesign terms, String currency) {
    return Reason.of(
        PREFIX + "worth",
        "investment",
        money.investment(),
        "currency",
        currency,
        "saving",
        money.yearlyEnergySaving() + money.yearlyOtherSaving(),
        "cost",
        money.yearlyCost(),
        "years",
        terms.lifeYears(),
        "discountPercent",
        Part.percent(terms.discountRate()),
        "netPresentValue",
        money.netPresentValue(),
        "expected",
        money.expectedNetPresentValue());
  }

  private static Reason sign(AppraisalEstimate money, Comparisons basis, String currency) {
    FinanceCoefficients swing = basis.set().bind(FinanceCoefficients.class);
    return Reason.of(
        PREFIX + WireName.of(money.sign()),
        "least",
        money.least(),
        "most",
        money.most(),
        "currency",
        currency,
        "pricePercent",
        Part.percent(swing.priceSwing()),
        "lifePercent",
        Part.percent(swing.lifeSwing()));
  }

  private static Reason payback(AppraisalEstimate money, MoneyDesign terms) {
    if (money.neverPays()) {
      return Reason.of(PREFIX + "never-pays", "years", terms.lifeYears());
    }
    return money.internalRate() == null
        ? Reason.of(PREFIX + "payback", "years", money.discountedPaybackYears())
        : Reason.of(
            PREFIX + "payback-and-rate",
            "years",
            money.discountedPaybackYears(),
            "ratePercent",
            Part.percent(money.internalRate()));
  }
}
