package org.marshlight.compost;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;

/**
 * The course of a heap's temperature with its coefficients at their values, and with the three that
 * matter most moved together towards the ends of their ranges: each by its range over the square
 * root of three, so that the whole range is about as likely as that of one of them alone.
 *
 * @param cool slow decay, well conducting, much air
 * @param middle as the coefficients are
 * @param warm fast decay, well insulating, little air
 */
record HeapRange(HeapCourse cool, HeapCourse middle, HeapCourse warm) {

  private static final String RATE = "compost.rate-at-20";
  private static final String CONDUCTIVITY = "compost.conductivity";
  private static final String AIR = "compost.air-excess";
  private static final double MOVED_TOGETHER = 3;

  static HeapRange of(HeapCourse.Batch batch, CompostSite site, CoefficientSet set) {
    HeatCoefficients c = set.bind(HeatCoefficients.class);
    HeatCoefficients cool = c.with(low(RATE, set), high(CONDUCTIVITY, set), high(AIR, set));
    HeatCoefficients warm = c.with(high(RATE, set), low(CONDUCTIVITY, set), low(AIR, set));
    return new HeapRange(
        HeapCourse.of(batch, site, cool),
        HeapCourse.of(batch, site, c),
        HeapCourse.of(batch, site, warm));
  }

  /**
   * How a rule is met. Slow decay is cooler but lasts longer, so no one course is the worst for
   * every rule.
   */
  Hygiene answer(Predicate<HeapCourse> rule) {
    List<HeapCourse> courses = List.of(cool, middle, warm);
    if (courses.stream().allMatch(rule)) {
      return Hygiene.MET;
    }
    return courses.stream().anyMatch(rule) ? Hygiene.DOUBTFUL : Hygiene.NOT_MET;
  }

  /** The least of a figure of the three courses. */
  double least(ToDoubleFunction<HeapCourse> figure) {
    return Stream.of(cool, middle, warm).mapToDouble(figure).min().orElseThrow();
  }

  /** The greatest of a figure of the three courses. */
  double greatest(ToDoubleFunction<HeapCourse> figure) {
    return Stream.of(cool, middle, warm).mapToDouble(figure).max().orElseThrow();
  }

  private static double low(String id, CoefficientSet set) {
    CoefficientRow row = set.book().find(id).orElseThrow();
    return moved(set.value(id), row.low() / row.value());
  }

  private static double high(String id, CoefficientSet set) {
    CoefficientRow row = set.book().find(id).orElseThrow();
    return moved(set.value(id), row.high() / row.value());
  }

  /** A value moved towards an end of its range, which goes with the value if the run has set it. */
  private static double moved(double value, double endOverCentral) {
    return value * (1 + (endOverCentral - 1) / Math.sqrt(MOVED_TOGETHER));
  }
}
