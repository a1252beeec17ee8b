package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.CoverKind;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.BedDesign;

/** The same plan with one part left out. */
final class PlanWithout {

  static final CoverDesign EARTH =
      new CoverDesign(CoverKind.EARTH, null, null, null, null, null, null, null);

  private PlanWithout() {}

  /** Nothing catches the gas. */
  static Plan gas(Plan plan) {
    return changed(plan, "gas", null);
  }

  /** Soil of the burial depth over the lid in place of glass. */
  static Plan glass(Plan plan) {
    return changed(plan, "cover", EARTH);
  }

  /** Nothing over the glass at night. */
  static Plan nightInsulation(Plan plan) {
    return changed(plan, "cover", changed(plan.cover(), "nightResistanceM2KW", 0.0));
  }

  /** Nothing fed beside the household's wastewater. */
  static Plan feeds(Plan plan) {
    return changed(plan, "feeds", null);
  }

  /** The tank's outflow straight to the soil; nothing grows, so nothing is mashed. */
  static Plan beds(Plan plan) {
    return fuel(changed(changed(plan, "beds", null), "diversion", null));
  }

  /** All beds but one; without any, as {@link #beds}. */
  static Plan bed(Plan plan, int index) {
    List<BedDesign> others = new ArrayList<>(plan.beds());
    others.remove(index);
    return others.isEmpty() ? beds(plan) : changed(plan, "beds", List.copyOf(others));
  }

  /** Nothing is mashed. */
  static Plan fuel(Plan plan) {
    return changed(plan, "fuel", null);
  }

  /** Residues to land as they are. */
  static Plan compost(Plan plan) {
    return changed(plan, "compost", null);
  }

  /** The household's wastewater alone in a tank under earth, and nothing after it. */
  static Plan everything(Plan plan) {
    return compost(beds(feeds(glass(gas(plan)))));
  }
}
