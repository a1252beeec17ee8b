package org.marshlight.decision;

import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.CoverKind;
import org.marshlight.loop.Plan;

/** The same plan with one part left out. */
final class PlanWithout {

  private static final CoverDesign EARTH =
      new CoverDesign(CoverKind.EARTH, null, null, null, null, null, null, null);

  private PlanWithout() {}

  /** Soil of the burial depth over the lid in place of glass. */
  static Plan glass(Plan plan) {
    return withCover(plan, EARTH);
  }

  /** Nothing over the glass at night. */
  static Plan nightInsulation(Plan plan) {
    CoverDesign cover = plan.cover();
    return withCover(
        plan,
        new CoverDesign(
            cover.kind(),
            cover.apertureM2(),
            cover.tiltDeg(),
            cover.azimuthDeg(),
            cover.layers(),
            cover.absorptance(),
            cover.enclosureResistanceM2KW(),
            0.0));
  }

  /** The tank's outflow straight to the soil; nothing grows, so nothing is mashed. */
  static Plan beds(Plan plan) {
    return new Plan(
        plan.name(),
        plan.site(),
        plan.people(),
        plan.feeds(),
        plan.tank(),
        plan.cover(),
        plan.gas(),
        null,
        plan.waterUse(),
        null,
        null,
        plan.compost(),
        plan.routes(),
        plan.given(),
        plan.money(),
        plan.coefficients());
  }

  /** Residues to land as they are. */
  static Plan compost(Plan plan) {
    return new Plan(
        plan.name(),
        plan.site(),
        plan.people(),
        plan.feeds(),
        plan.tank(),
        plan.cover(),
        plan.gas(),
        plan.beds(),
        plan.waterUse(),
        plan.diversion(),
        plan.fuel(),
        null,
        plan.routes(),
        plan.given(),
        plan.money(),
        plan.coefficients());
  }

  private static Plan withCover(Plan plan, CoverDesign cover) {
    return new Plan(
        plan.name(),
        plan.site(),
        plan.people(),
        plan.feeds(),
        plan.tank(),
        cover,
        plan.gas(),
        plan.beds(),
        plan.waterUse(),
        plan.diversion(),
        plan.fuel(),
        plan.compost(),
        plan.routes(),
        plan.given(),
        plan.money(),
        plan.coefficients());
  }
}
