package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.WaterUse;

/**
 * Ids of the cautions that a part brings and the plan would not have without it. The rules of the
 * safety package raise them; a test holds this list to those rules. That a plan is beyond the
 * standard for household gas is told by its own caution alone.
 */
final class Hazards {

  private static final String SOLIDS = "solids-carry-over";
  private static final List<String> STILL =
      List.of("ethanol-fire", "distilling", "ethanol-poisoning", "permits");

  private final Plan plan;
  private final Effects with;
  private final Effects without;

  private Hazards(Plan plan, Effects with, Effects without) {
    this.plan = plan;
    this.with = with;
    this.without = without;
  }

  /**
   * The hazards of a part.
   *
   * @param component the part
   * @param plan the plan that has it
   * @param with what the plan comes to
   * @param without what it comes to without the part
   */
  static List<String> of(Component component, Plan plan, Effects with, Effects without) {
    Hazards hazards = new Hazards(plan, with, without);
    return switch (component) {
      case GAS_CAPTURE -> hazards.gas();
      case GLASS -> hazards.glass();
      case NIGHT_INSULATION, BED -> List.of();
      case CO_FEEDING -> hazards.feeding();
      case BEDS -> hazards.beds();
      case FUEL_ALCOHOL -> STILL;
      case COMPOST -> List.of("compost-use");
    };
  }

  private List<String> gas() {
    List<String> hazards = new ArrayList<>(List.of("air-in-store", "gas-heavy"));
    addIf(plan.gas().uses() != null && !plan.gas().uses().isEmpty(), "gas-indoors", hazards);
    addIf(plan.gas().pressureKPa() == null, "gas-pressure", hazards);
    if (with.run().digester().estimate().annual().methaneNm3() > 0) {
      hazards.add("gas-store");
      hazards.add("gas-sulphide");
    }
    return List.copyOf(hazards);
  }

  private List<String> glass() {
    List<String> hazards = new ArrayList<>(List.of("glass-heat"));
    addIf(scalds(with) && !scalds(without), "scald", hazards);
    addIf(plan.feeds() == null || plan.feeds().isEmpty(), SOLIDS, hazards);
    return List.copyOf(hazards);
  }

  private static boolean scalds(Effects effects) {
    DigesterEstimate tank = effects.run().digester().estimate();
    return tank.annual().lidAboveScaldHours() > 0
        || tank.annual().highestLiquorTemperatureC() > DigesterEstimate.SCALD_C;
  }

  private List<String> feeding() {
    List<String> hazards = new ArrayList<>();
    addIf(
        plan.feeds().stream().anyMatch(feed -> feed.feed().endsWith("-manure")),
        "animal-by-products",
        hazards);
    boolean open =
        plan.cover() == null
            || plan.cover().kind() == CoverKind.EARTH
            || plan.cover().kind() == CoverKind.NONE;
    addIf(open, SOLIDS, hazards);
    return List.copyOf(hazards);
  }

  /** Beds, and the still that has nothing to mash without them. */
  private List<String> beds() {
    List<String> hazards = new ArrayList<>(List.of("bed-plants"));
    addIf(
        plan.waterUse() == null || plan.waterUse() == WaterUse.IRRIGATION,
        "reuse-of-water",
        hazards);
    addIf(plan.people() == null, "wells", hazards);
    if (plan.fuel() != null) {
      hazards.addAll(STILL);
    }
    return List.copyOf(hazards);
  }

  private static void addIf(boolean applies, String hazard, List<String> hazards) {
    if (applies) {
      hazards.add(hazard);
    }
  }
}
