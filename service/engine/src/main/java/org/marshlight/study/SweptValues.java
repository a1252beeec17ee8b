package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Months;
import org.marshlight.contract.Pointer;
import org.marshlight.loop.PlanField;

/** The values over which a number is swept. */
final class SweptValues {

  private static final double[] NONE = {};

  private SweptValues() {}

  /**
   * The values.
   *
   * @param swept what was asked for
   * @param field the field; null if there is none, which is a fault already
   * @param at where it stands in the request
   * @param faults receives what makes no sense
   */
  static double[] of(SweptField swept, PlanField field, String at, List<Fault> faults) {
    boolean range = swept.from() != null || swept.to() != null || swept.points() != null;
    if ((swept.values() == null) != range) {
      faults.add(
          Fault.of(
              "study.values-or-range", at, null, "values, or from with to and points, not both"));
      return NONE;
    }
    double[] values = range ? steps(swept, at, faults) : Months.array(swept.values());
    if (range && field != null && values.length > 0) {
      RangeWidth.check(swept.from(), swept.to(), field, at + "/to", faults);
    }
    for (int i = 0; field != null && i < values.length; i++) {
      String place = range ? at + (i == 0 ? "/from" : "/to") : Pointer.child(at + "/values", i);
      if (!range || i == 0 || i == values.length - 1) {
        VariedFactor.within(values[i], field, place, faults);
      }
      if (field.whole() && values[i] != Math.rint(values[i])) {
        faults.add(
            Fault.of(
                "study.whole-numbers", range ? at + "/points" : place, values[i], "whole numbers"));
        break;
      }
    }
    return values;
  }

  private static double[] steps(SweptField swept, String at, List<Fault> faults) {
    if (swept.from() == null || swept.to() == null || swept.points() == null) {
      faults.add(
          Fault.of(
              "study.values-or-range", at, null, "values, or from with to and points, not both"));
      return NONE;
    }
    if (swept.from().equals(swept.to())) {
      faults.add(
          Fault.of("study.empty-range", at + "/to", swept.to(), "another value than from has"));
      return NONE;
    }
    double[] values = new double[swept.points()];
    int last = values.length - 1;
    for (int i = 0; i <= last; i++) {
      values[i] = i == last ? swept.to() : swept.from() + (swept.to() - swept.from()) * i / last;
    }
    return values;
  }
}
