package org.marshlight.economy;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** Cost of building each part, in the plan's currency. */
@Meaning("Cost of building each part, in the plan's currency.")
public record CapitalDesign(
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "The tank itself.") Double tank,
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Glass and night insulation over it.")
        Double cover,
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Store, pipes and burners.") Double gas,
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "All beds.") Double beds,
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Mash tun, fermenter and still.")
        Double fuel,
    @Quantity(unit = "1", min = 0, max = 1e9, meaning = "Heap or bins.") Double compost) {

  /** Cost of a part; null if not given. */
  public Double of(PlanPart part) {
    return switch (part) {
      case TANK -> tank;
      case COVER -> cover;
      case GAS -> gas;
      case BEDS -> beds;
      case FUEL -> fuel;
      case COMPOST -> compost;
    };
  }

  /** Costs of all parts that are given. */
  public double sum() {
    double sum = 0;
    for (PlanPart part : PlanPart.values()) {
      Double cost = of(part);
      sum += cost == null ? 0 : cost;
    }
    return sum;
  }
}
