package org.marshlight.study;

import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/**
 * A plan as it is, run once; what a study varies is compared with it and shares its weather where
 * that is the same.
 *
 * @param plan a legal plan
 * @param set its coefficients
 * @param site its site
 * @param outcome what came out
 */
record BaseRun(Plan plan, CoefficientSet set, PreparedSite site, Outcome outcome) {

  /** Coefficients on which the weather rests. */
  private static final int[] OF_WEATHER =
      CoefficientBook.standard().rows().stream()
          .filter(row -> row.id().startsWith("climate.") || row.id().startsWith("soils."))
          .mapToInt(row -> CoefficientBook.standard().ordinal(row.id()))
          .toArray();

  static BaseRun of(Plan plan) {
    CoefficientSet set = LoopModel.coefficients(plan);
    PreparedSite site = PreparedSite.of(plan, set);
    return new BaseRun(plan, set, site, Outcome.of(plan, set, site));
  }

  /** Whether a plan has the same weather with other coefficients. */
  static boolean sameWeather(Plan one, CoefficientSet ofOne, Plan other, CoefficientSet ofOther) {
    return one.site().equals(other.site()) && ofOne.agrees(ofOther, OF_WEATHER);
  }

  /** Runs a changed plan with its own coefficients. */
  Outcome run(Plan changed) {
    return new Sites(this).run(changed, LoopModel.coefficients(changed), Stage.LOOP);
  }
}
