package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.GasDesign;
import org.marshlight.digester.HeatCoefficients;
import org.marshlight.digester.TankDesign;
import org.marshlight.digester.TankGeometry;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.BedDesign;

/**
 * Parts of a plan with their defaults filled, and the sizes of the tank.
 *
 * @param tank the tank; null without
 * @param geometry its sizes; null without
 * @param gasSpaceM height of its gas space
 * @param cover what lies over it, complete; null without tank
 * @param gas how gas is kept; null if it is not caught
 * @param beds the beds
 */
record Sizes(
    TankDesign tank,
    TankGeometry geometry,
    double gasSpaceM,
    CoverDesign cover,
    GasDesign gas,
    List<BedDesign> beds) {

  static Sizes of(Plan plan, double latitudeRad, CoefficientSet set) {
    Defaults defaults = new Defaults(set);
    double gasSpace = set.bind(HeatCoefficients.class).gasSpaceHeight();
    TankDesign tank = plan.tank() == null ? null : defaults.fill(plan.tank(), "/tank");
    TankGeometry geometry = tank == null ? null : TankGeometry.of(tank, gasSpace);
    CoverDesign cover = null;
    if (tank != null) {
      CoverDesign given = plan.cover() == null ? CoverDesign.UNCOVERED : plan.cover();
      cover = defaults.fill(given, "/cover").over(geometry.planAreaM2(), latitudeRad);
    }
    List<BedDesign> beds = new ArrayList<>();
    for (BedDesign bed : plan.beds() == null ? List.<BedDesign>of() : plan.beds()) {
      beds.add(defaults.fill(bed, "/beds"));
    }
    return new Sizes(
        tank,
        geometry,
        gasSpace,
        cover,
        plan.gas() == null ? null : defaults.fill(plan.gas(), "/gas"),
        List.copyOf(beds));
  }

  boolean glazed() {
    return cover != null && cover.kind() == CoverKind.GLAZED;
  }

  /** Whether something is laid over the glass at night. */
  boolean quilted() {
    return glazed() && cover.nightResistanceM2KW() > 0;
  }

  double glassM2() {
    return glazed() ? cover.apertureM2() : 0;
  }
}
