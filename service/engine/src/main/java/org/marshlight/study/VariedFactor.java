package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Sentences;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.Distribution;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanField;
import org.marshlight.loop.RecordCheck;
import org.marshlight.statistics.Spread;
import org.marshlight.statistics.SpreadFit;

/** Turns a stated range into an uncertain number. */
final class VariedFactor {

  private VariedFactor() {}

  /**
   * The uncertain number of a stated range.
   *
   * @param varied the range, filled
   * @param plan a legal plan
   * @param at where the range stands in the request
   * @param faults receives what makes no sense
   * @return the number, or null with a fault
   */
  static Factor of(Varied varied, Plan plan, String at, List<Fault> faults) {
    PlanField field = PlanField.find(plan, varied.pointer(), at + "/pointer", faults);
    if (field == null) {
      return null;
    }
    int before = faults.size();
    if (!(varied.low() < varied.high())) {
      faults.add(
          Fault.of(
              "study.low-not-below-high",
              at + "/low",
              varied.low(),
              "less than " + Sentences.number(varied.high()),
              "high",
              varied.high()));
    } else {
      RangeWidth.check(varied.low(), varied.high(), field, at + "/high", faults);
    }
    within(varied.low(), field, at + "/low", faults);
    within(varied.high(), field, at + "/high", faults);
    if (varied.distribution() == Distribution.FIXED) {
      faults.add(
          Fault.of(
              "study.fixed-varied", at + "/distribution", "fixed", "a distribution that spreads"));
    }
    if (varied.distribution() == Distribution.LOGNORMAL && varied.low() <= 0) {
      faults.add(
          Fault.of("study.lognormal-above-nought", at + "/low", varied.low(), "a value above 0"));
    }
    return faults.size() > before ? null : factor(varied, field, plan);
  }

  private static Factor factor(Varied varied, PlanField field, Plan plan) {
    double present = field.value(plan);
    double central =
        Double.isNaN(present)
            ? (varied.low() + varied.high()) / 2
            : Math.max(varied.low(), Math.min(varied.high(), present));
    Spread spread =
        SpreadFit.of(varied.distribution(), varied.low(), central, varied.high())
            .within(field.low(), field.high());
    return field.coefficient() == null
        ? new Factor.OfField(field, spread)
        : Factor.OfCoefficient.of(
            CoefficientBook.standard().find(field.coefficient()).orElseThrow(), spread);
  }

  /** Adds a fault if a number may not stand in a field. */
  static void within(double value, PlanField field, String at, List<Fault> faults) {
    if (!(value >= field.low() && value <= field.high())) {
      faults.add(
          RecordCheck.outOfRange(
              at, value, field.pointer(), field.low(), field.high(), field.unit()));
    }
  }
}
