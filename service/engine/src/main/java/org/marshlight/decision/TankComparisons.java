package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/** How the tank would fare under earth in place of glass, or driven by monthly normals alone. */
public final class TankComparisons {

  private TankComparisons() {}

  /**
   * Remarks that set a tank's year beside another.
   *
   * @param plan a legal plan
   * @param stage the stage that was run; glass is weighed by a verdict where it is the whole loop
   * @param run its run
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   */
  public static List<Notice> of(
      Plan plan, Stage stage, LoopRun run, PreparedSite site, CoefficientSet set) {
    List<Notice> notices = new ArrayList<>();
    if (run.digester() == null) {
      return notices;
    }
    DigesterEstimate tank = run.digester().estimate();
    if (stage == Stage.DIGESTER
        && plan.cover() != null
        && plan.cover().kind() == CoverKind.GLAZED) {
      DigesterEstimate earth = digester(PlanWithout.glass(plan), stage, site, set);
      notices.add(
          Notice.of(
              "decision.tank-under-earth",
              "glassC",
              tank.annual().meanLiquorTemperatureC(),
              "earthC",
              earth.annual().meanLiquorTemperatureC(),
              "glassNm3",
              tank.annual().methaneNm3(),
              "earthNm3",
              earth.annual().methaneNm3()));
    }
    if (plan.site().hours() != null) {
      Plan normals = changed(plan, "site", plan.site().withoutHours());
      notices.add(byHours(tank, digester(normals, stage, PreparedSite.of(normals, set), set)));
    }
    return notices;
  }

  private static DigesterEstimate digester(
      Plan plan, Stage stage, PreparedSite site, CoefficientSet set) {
    return LoopModel.run(plan, stage, site, set, new TankYears()).digester().estimate();
  }

  private static Notice byHours(DigesterEstimate hours, DigesterEstimate normals) {
    double most = 0;
    for (int month = 0; month < hours.monthly().liquorTemperatureC().size(); month++) {
      most =
          Math.max(
              most,
              Math.abs(
                  hours.monthly().liquorTemperatureC().get(month)
                      - normals.monthly().liquorTemperatureC().get(month)));
    }
    return Notice.of(
        "climate.hours-drive",
        "meanK",
        hours.annual().meanLiquorTemperatureC() - normals.annual().meanLiquorTemperatureC(),
        "mostK",
        most);
  }
}
