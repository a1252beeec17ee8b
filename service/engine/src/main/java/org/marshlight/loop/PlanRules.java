package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.NormalsCheck;
import org.marshlight.contract.Fault;
import org.marshlight.evidence.CoefficientBook;

/** Rules that join several fields of a plan; each field alone has already been found legal. */
final class PlanRules {

  private PlanRules() {}

  static List<Fault> faults(Plan plan) {
    List<Fault> faults = new ArrayList<>();
    climate(plan, faults);
    return faults;
  }

  private static void climate(Plan plan, List<Fault> faults) {
    boolean named = plan.site().climate().id() != null;
    boolean given = plan.site().climate().monthly() != null;
    if (named == given) {
      faults.add(
          Fault.of(
              "loop.one-of-two",
              "/site/climate",
              null,
              "exactly one of id and monthly",
              "first",
              "id",
              "second",
              "monthly"));
    }
    if (given && plan.site().latitudeDeg() == null) {
      faults.add(
          Fault.of(
              "loop.missing", "/site/latitudeDeg", null, "-90 to 90 deg", "field", "latitudeDeg"));
    } else if (given) {
      faults.addAll(
          NormalsCheck.faults(
              plan.site().climate().monthly(),
              plan.site().latitudeDeg(),
              "/site/climate/monthly",
              CoefficientBook.standard().central()));
    }
  }
}
