package org.marshlight.decision;

import java.util.List;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.digester.GasDesign;
import org.marshlight.loop.Plan;

/**
 * Ids of the cautions that a part brings and the plan would not have without it. The rules of the
 * safety package raise them; a test holds this list to those rules.
 */
final class Hazards {

  private Hazards() {}

  static List<String> of(Component component, Plan plan) {
    return switch (component) {
      case GAS_CAPTURE -> gas(plan.gas());
      case GLASS -> List.of("glass-heat");
      case NIGHT_INSULATION -> List.of();
      case CO_FEEDING ->
          plan.feeds().stream().anyMatch(feed -> feed.feed().endsWith("-manure"))
              ? List.of("animal-by-products")
              : List.of();
      case BEDS, BED -> List.of("bed-plants");
      case FUEL_ALCOHOL -> List.of("ethanol-fire", "distilling", "ethanol-poisoning", "permits");
      case COMPOST -> List.of("compost-use");
    };
  }

  private static List<String> gas(GasDesign gas) {
    boolean used = gas.uses() != null && !gas.uses().isEmpty();
    return used
        ? List.of("air-in-store", "gas-heavy", "gas-indoors")
        : List.of("air-in-store", "gas-heavy");
  }
}
