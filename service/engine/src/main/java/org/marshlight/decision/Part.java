package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.WireName;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Measure;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.economy.AppraisalEstimate;

/** One part under judgement: what it was held against, and the verdict as it is put together. */
final class Part {

  private static final double PERCENT = 100;

  private final Component component;
  private final String bed;
  private final Effects with;
  private final Effects without;
  private final AppraisalEstimate money;
  private final Comparisons basis;
  private final double workHours;
  private final List<Reason> first = new ArrayList<>();
  private final List<Reason> then = new ArrayList<>();
  private final List<Reason> conditions = new ArrayList<>();
  private final List<String> heldBackBy = new ArrayList<>();

  Part(
      Component component,
      String bed,
      Effects with,
      Effects without,
      AppraisalEstimate money,
      Comparisons basis,
      double workHours) {
    this.component = component;
    this.bed = bed;
    this.with = with;
    this.without = without;
    this.money = money;
    this.basis = basis;
    this.workHours = workHours;
  }

  AppraisalEstimate money() {
    return money;
  }

  double usefulGainKWh() {
    return with.service().annualUsefulKWh() - without.service().annualUsefulKWh();
  }

  /** Adds a reason. */
  Part because(String code, Object... params) {
    return because(Reason.of(code, params));
  }

  /** Adds a reason. */
  Part because(Reason reason) {
    then.add(reason);
    return this;
  }

  /** Adds a reason that keeps the answer below yes. */
  Part failing(String code, Object... params) {
    first.add(Reason.of(code, params));
    heldBackBy.add(code);
    return this;
  }

  /** Adds a condition that the plan may meet. */
  Part provided(String code, Object... params) {
    conditions.add(Reason.of(code, params));
    return this;
  }

  /** Adds a hazard that the plan leaves open: no yes until it is answered. */
  Part notBefore(String code, Object... params) {
    heldBackBy.add(code);
    return provided(code, params);
  }

  /** The verdict by money where that is known, else by energy, which it then says. */
  Verdict byMoneyOr(Measure energy) {
    if (money == null) {
      then.add(0, Reason.of("decision.rests-on-energy"));
      return by(Verdict.Basis.ENERGY, energy);
    }
    List<Reason> reasons = MoneyReasons.of(money, basis);
    if (usefulGainKWh() <= 0 && component != Component.FUEL_ALCOHOL) {
      if (worthInMoney() == Worth.NO) {
        then.addAll(reasons);
        first.add(Reason.of("decision.adds-nothing", "gainKWh", usefulGainKWh()));
        return finished(Verdict.Basis.ENERGY, energy, Worth.NO);
      }
      failing("decision.earns-otherwise", "gainKWh", usefulGainKWh());
    }
    then.addAll(0, reasons);
    return finished(Verdict.Basis.MONEY, byMoney(), worthInMoney());
  }

  private Worth worthInMoney() {
    return switch (money.sign()) {
      case PAYS -> Worth.YES;
      case UNSURE -> Worth.MARGINAL;
      case DOES_NOT_PAY -> Worth.NO;
    };
  }

  private Measure byMoney() {
    double expected = money.expectedNetPresentValue();
    return new Measure(expected, expected - money.least(), expected - money.most(), "1");
  }

  /** The verdict by a number that decides whatever is known of money. */
  Verdict by(Verdict.Basis rests, Measure measure) {
    return finished(rests, measure, measure.worth());
  }

  /** The verdict whatever the number says. */
  Verdict finished(Verdict.Basis rests, Measure measure, Worth worth) {
    Worth answer = !heldBackBy.isEmpty() && worth == Worth.YES ? Worth.MARGINAL : worth;
    Difference difference =
        Difference.of(
            with, without, workHours, money, Hazards.of(component, basis.plan(), with, without));
    if (basis.plan().money() != null
        && rests != Verdict.Basis.MONEY
        && money != null
        && then.stream().noneMatch(reason -> MoneyReasons.isOne(reason.code()))) {
      then.addAll(MoneyReasons.of(money, basis));
    }
    if (money != null && rests != Verdict.Basis.MONEY && contradicts(answer)) {
      then.add(Reason.of("decision.not-for-the-money", "basis", WireName.of(rests)));
    }
    climate(difference);
    List<Reason> reasons = new ArrayList<>(first);
    reasons.addAll(then);
    return new Verdict(
        component,
        bed,
        answer,
        rests,
        measure,
        List.copyOf(reasons),
        List.copyOf(conditions),
        heldBackBy.stream().distinct().toList(),
        difference);
  }

  /** Whether money says the opposite of the verdict, which the sentences then have to explain. */
  private boolean contradicts(Worth answer) {
    Worth inMoney = worthInMoney();
    return then.stream().anyMatch(reason -> MoneyReasons.isOne(reason.code()))
        && (answer == Worth.YES && inMoney == Worth.NO
            || answer == Worth.NO && inMoney == Worth.YES);
  }

  private void climate(Difference difference) {
    double over100 = difference.gases().over100YearsKg();
    double over20 = difference.gases().over20YearsKg();
    boolean better = over100 < 0 && over20 < 0;
    boolean worse = over100 > 0 && over20 > 0;
    if (better || worse) {
      then.add(
          Reason.of(
              better ? "decision.climate-better" : "decision.climate-worse",
              "over100Kg",
              Math.abs(over100),
              "over20Kg",
              Math.abs(over20)));
    } else if (over100 != 0 || over20 != 0) {
      then.add(Reason.of("decision.climate-mixed", "over100Kg", over100, "over20Kg", over20));
    }
  }

  static double percent(double fraction) {
    return PERCENT * fraction;
  }
}
