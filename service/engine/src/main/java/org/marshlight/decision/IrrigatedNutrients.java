package org.marshlight.decision;

import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.loop.LoopRun;
import org.marshlight.wetland.WaterUse;

/**
 * Nutrients that reach land with the outflow that irrigates it. The books show them as used water,
 * not as returned to land.
 *
 * @param irrigated nutrients in the irrigation water
 * @param returned nutrients that count as returned to land
 * @param leastShare share of what reaches land from which the difference matters
 */
record IrrigatedNutrients(Nutrients irrigated, Nutrients returned, double leastShare) {

  /** What a run irrigates with; nothing where its outflow has another use. */
  static IrrigatedNutrients of(LoopRun run, CoefficientSet set) {
    boolean irrigates =
        run.wetland() != null && run.wetland().estimate().fitness().use() == WaterUse.IRRIGATION;
    return new IrrigatedNutrients(
        irrigates ? given(run, Party.WATER_USE) : Nutrients.NONE,
        given(run, Party.LAND),
        set.bind(DecisionCoefficients.class).irrigatedShare());
  }

  private static Nutrients given(LoopRun run, String party) {
    Matter sum = Matter.NONE;
    for (Account account : run.accounts()) {
      for (Account.Entry entry : account.gave()) {
        if (entry.party().equals(party)) {
          sum = sum.plus(entry.matter());
        }
      }
    }
    return Nutrients.of(sum);
  }

  /** Whether so much goes with the water that nutrients returned to land are understated. */
  boolean matter() {
    return matter(irrigated.nitrogenKg(), returned.nitrogenKg())
        || matter(irrigated.phosphorusKg(), returned.phosphorusKg())
        || matter(irrigated.potassiumKg(), returned.potassiumKg());
  }

  private boolean matter(double irrigatedKg, double returnedKg) {
    return irrigatedKg > leastShare * (irrigatedKg + returnedKg);
  }

  /** What a reader of returned nutrients must know. */
  Notice notice() {
    return Notice.severe(
        "decision.irrigation-not-counted",
        "nitrogenKg",
        irrigated.nitrogenKg(),
        "phosphorusKg",
        irrigated.phosphorusKg(),
        "potassiumKg",
        irrigated.potassiumKg());
  }
}
