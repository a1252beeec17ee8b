package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.util.FastMath;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.TankGeometry;
import org.marshlight.digester.TankShape;
import org.marshlight.economy.PlanPart;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.BedKind;

/** Materials that the geometry of a plan asks for. */
final class Materials {

  private static final double MJ_PER_KWH = 3.6;

  private final Sizes sizes;
  private final BuildingCoefficients c;
  private final List<MaterialNeeded> needed = new ArrayList<>();

  private Materials(Sizes sizes, BuildingCoefficients c) {
    this.sizes = sizes;
    this.c = c;
  }

  /**
   * What is needed for the parts of a plan.
   *
   * @param still whether fuel alcohol is made
   */
  static List<MaterialNeeded> of(Sizes sizes, boolean still, BuildingCoefficients c) {
    Materials materials = new Materials(sizes, c);
    if (sizes.tank() != null) {
      materials.tank();
    }
    if (sizes.glazed()) {
      materials.glazing();
    }
    if (sizes.gas() != null) {
      materials.addExact("gas-store", PlanPart.GAS, sizes.gas().storeM3(), "m3", c.gasStoreMJM3());
      materials.addExact("gas-train", PlanPart.GAS, 1, "1", c.gasTrainMJ());
    }
    sizes.beds().forEach(materials::bed);
    if (still) {
      materials.addExact("still", PlanPart.FUEL, 1, "1", c.stillMJ());
    }
    return List.copyOf(materials.needed);
  }

  private void tank() {
    TankGeometry geometry = sizes.geometry();
    double margin = 2 * c.excavationMarginM();
    double pit = (geometry.lengthM() + margin) * (geometry.widthM() + margin);
    if (sizes.tank().shape() == TankShape.CYLINDRICAL) {
      pit *= FastMath.PI / 4;
    }
    addExact("tank-pit", PlanPart.TANK, pit * geometry.floorDepthM(), "m3", c.excavationMJM3());
    double walls =
        geometry.perimeterM() * (geometry.liquidDepthM() + sizes.gasSpaceM())
            + geometry.planAreaM2();
    insulation(
        "wall-insulation",
        PlanPart.TANK,
        sizes.tank().wallResistanceM2KW() - c.bareWallM2KW(),
        walls);
    insulation(
        "lid-insulation",
        PlanPart.TANK,
        sizes.tank().lidResistanceM2KW() - c.bareWallM2KW(),
        geometry.planAreaM2());
  }

  private void glazing() {
    CoverDesign cover = sizes.cover();
    double panes = cover.apertureM2() * cover.layers();
    add(
        "glass",
        PlanPart.COVER,
        panes,
        "m2",
        c.paneThicknessM() * c.glassDensityKgM3() * c.glassMJKg());
    double length = sizes.geometry().lengthM();
    double tilt = FastMath.toRadians(cover.tiltDeg());
    double slope = cover.apertureM2() / length;
    double back = slope * FastMath.sin(tilt);
    double sides = back * length + back * slope * FastMath.cos(tilt);
    insulation("enclosure-insulation", PlanPart.COVER, cover.enclosureResistanceM2KW(), sides);
    insulation("night-insulation", PlanPart.COVER, cover.nightResistanceM2KW(), cover.apertureM2());
  }

  private void bed(BedDesign bed) {
    double length =
        bed.lengthM() == null ? Math.sqrt(c.bedLengthOverWidth() * bed.areaM2()) : bed.lengthM();
    double width = bed.areaM2() / length;
    double deep = bed.depthM() + c.freeboardM();
    add("liner", PlanPart.BEDS, (length + 2 * deep) * (width + 2 * deep), "m2", c.linerMJM2());
    addExact("bed-pit", PlanPart.BEDS, bed.areaM2() * deep, "m3", c.excavationMJM3());
    if (bed.kind() == BedKind.HORIZONTAL_SUBSURFACE) {
      add("gravel", PlanPart.BEDS, bed.areaM2() * bed.depthM(), "m3", c.gravelMJM3());
    }
  }

  private void insulation(String code, PlanPart part, double resistanceM2KW, double areaM2) {
    if (resistanceM2KW > 0 && areaM2 > 0) {
      add(
          code,
          part,
          resistanceM2KW * c.insulationConductivity() * areaM2,
          "m3",
          c.insulationMJM3());
    }
  }

  private void add(String code, PlanPart part, double amount, String unit, double energyMJ) {
    add(code, part, amount, unit, c.allowance(), energyMJ);
  }

  private void addExact(String code, PlanPart part, double amount, String unit, double energyMJ) {
    add(code, part, amount, unit, 0, energyMJ);
  }

  private void add(
      String code, PlanPart part, double amount, String unit, double allowance, double energyMJ) {
    double all = amount * (1 + allowance);
    if (all > 0) {
      needed.add(
          new MaterialNeeded(
              "decision.material-" + code,
              Sentences.text("decision.material-" + code, Params.of()),
              part,
              all,
              unit,
              allowance,
              Sentences.text("decision.basis-" + code, Params.of()),
              all * energyMJ / MJ_PER_KWH));
    }
  }
}
