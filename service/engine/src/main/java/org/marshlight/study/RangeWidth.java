package org.marshlight.study;

import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.loop.PlanField;

/** Refuses ranges of a study that are too narrow for a figure to change over them. */
final class RangeWidth {

  /**
   * Narrowest range, as a fraction of its end that is farther from zero. A change of a number by
   * less than a millionth of itself is lost among the rounding of the figures that it moves.
   */
  private static final double NARROWEST = 1e-6;

  private RangeWidth() {}

  /**
   * Adds a fault if a range is too narrow. Numbers that count as zero in a plan do so here too.
   *
   * @param from one end of the range, in the unit of the field
   * @param to the other end, in the same unit
   * @param field the field over which it ranges
   * @param at pointer of the end to blame, from the request's root
   * @param faults receives {@code study.range-too-narrow}
   */
  static void check(double from, double to, PlanField field, String at, List<Fault> faults) {
    double first = field.counted(from);
    double second = field.counted(to);
    double farther = Math.max(Math.abs(first), Math.abs(second));
    if (first == second || Math.abs(second - first) < NARROWEST * farther) {
      faults.add(
          Fault.of(
              "study.range-too-narrow",
              at,
              to,
              "farther from the other end",
              "parts",
              Math.round(1 / NARROWEST)));
    }
  }
}
