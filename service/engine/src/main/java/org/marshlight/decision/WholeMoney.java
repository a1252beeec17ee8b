package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.economy.Appraisal;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.economy.Discounting;
import org.marshlight.economy.FinanceTerms;
import org.marshlight.economy.Investment;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.economy.PlanPart;
import org.marshlight.economy.YearlyMoney;
import org.marshlight.loop.Plan;

/** The whole plan in money. */
final class WholeMoney {

  private final Comparisons basis;
  private final Effects with;
  private final MoneyDesign money;
  private final PartMoney parts;
  private final WorkEstimate work;
  private final FinanceTerms terms;

  private WholeMoney(Comparisons basis, Effects with, WorkEstimate work) {
    this.basis = basis;
    this.with = with;
    this.money = basis.money();
    this.parts = new PartMoney(basis, work);
    this.work = work;
    this.terms = basis.terms();
  }

  /** What a plan comes to; null where it gives no cost of any part. */
  static MoneyEstimate of(Comparisons basis, Effects with, WorkEstimate work) {
    return basis.money().capital() == null ? null : new WholeMoney(basis, with, work).estimate();
  }

  private MoneyEstimate estimate() {
    double toPay = 0;
    double sunk = 0;
    List<PlanPart> unknown = new ArrayList<>();
    for (PlanPart part : partsOf(basis.plan())) {
      Double cost = money.toPay(part);
      Double full = money.capital().of(part);
      if (cost == null) {
        unknown.add(part);
      } else {
        toPay += cost;
        sunk += money.owns(part) && full != null ? full : 0;
      }
    }
    double credited =
        PartMoney.orNought(basis.baseline().sewageCost()) + parts.absorptionCredit(with.run());
    double investment = toPay - credited;
    YearlyMoney yearly = yearly();
    AppraisalEstimate appraisal =
        Appraisal.of(investment, yearly, with.service().annualUsefulKWh(), terms);
    return new MoneyEstimate(
        money.currency(),
        credited,
        sunk,
        List.copyOf(unknown),
        appraisal,
        money.fuelPricePerKWh() == null
            ? null
            : Investment.usefulEnergyPrice(
                money.fuelPricePerKWh(), basis.displaced().stoveEfficiency()),
        conventions(investment, yearly),
        years(investment, yearly),
        money.budget() == null ? null : money.budget() - toPay);
  }

  /** Parts of a plan that have a cost. */
  static List<PlanPart> partsOf(Plan plan) {
    List<PlanPart> parts = new ArrayList<>();
    addIf(plan.tank() != null, PlanPart.TANK, parts);
    addIf(plan.cover() != null, PlanPart.COVER, parts);
    addIf(plan.gas() != null, PlanPart.GAS, parts);
    addIf(plan.beds() != null && !plan.beds().isEmpty(), PlanPart.BEDS, parts);
    addIf(plan.fuel() != null, PlanPart.FUEL, parts);
    addIf(plan.compost() != null, PlanPart.COMPOST, parts);
    return parts;
  }

  private static void addIf(boolean there, PlanPart part, List<PlanPart> parts) {
    if (there) {
      parts.add(part);
    }
  }

  private YearlyMoney yearly() {
    return new YearlyMoney(
        parts.gasSaving(with.service()) + parts.alcoholSaving(with.run()),
        parts.fertiliser(with.run())
            + parts.feedsOtherwise()
            + parts.ingredientsOtherwise()
            + PartMoney.orNought(basis.baseline().sewageYearlyCost()),
        PartMoney.orNought(money.yearlyCare())
            + parts.stillCost(with.run())
            + PartMoney.orNought(work.yearlyValue()));
  }

  private List<MoneyEstimate.Convention> conventions(double investment, YearlyMoney yearly) {
    double d = terms.discountRate();
    double e = terms.fuelPriceGrowth();
    double n = terms.lifeYears();
    double uniform = Discounting.uniform(d, n);
    return List.of(
        convention(
            MoneyEstimate.Timing.YEAR_END,
            Discounting.escalated(d, e, n),
            uniform,
            investment,
            yearly),
        convention(
            MoneyEstimate.Timing.YEAR_END_FIRST_NOT_GROWN,
            Discounting.inflating(d, e, n),
            uniform,
            investment,
            yearly),
        convention(
            MoneyEstimate.Timing.CONTINUOUS,
            Discounting.continuous(d, e, n),
            Discounting.continuous(d, 0, n),
            investment,
            yearly));
  }

  private static MoneyEstimate.Convention convention(
      MoneyEstimate.Timing timing,
      double energyFactor,
      double otherFactor,
      double investment,
      YearlyMoney yearly) {
    return new MoneyEstimate.Convention(
        timing,
        energyFactor,
        otherFactor,
        yearly.energy() * energyFactor
            + (yearly.other() - yearly.care()) * otherFactor
            - investment);
  }

  private List<MoneyEstimate.Year> years(double investment, YearlyMoney yearly) {
    List<MoneyEstimate.Year> years = new ArrayList<>();
    double cumulative = -investment;
    for (int year = 1; year <= terms.lifeYears(); year++) {
      double factor = Discounting.single(terms.discountRate(), year);
      double net =
          Discounting.grownPayment(yearly.energy(), terms.fuelPriceGrowth(), year + 1)
              + yearly.other()
              - yearly.care();
      cumulative += net * factor;
      years.add(
          new MoneyEstimate.Year(
              year,
              net,
              Discounting.stillWorking(terms.coefficients().failingShare(), year),
              factor,
              cumulative));
    }
    return List.copyOf(years);
  }
}
