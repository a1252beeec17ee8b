package org.marshlight.loop;

import org.marshlight.contract.Meaning;
import org.marshlight.contract.Usual;

/** Where streams go that have a choice. */
@Meaning("Where streams go that have a choice.")
public record RoutesDesign(
    @Meaning("Where greywater goes when only toilet water enters the tank.") @Usual("first-bed")
        GreywaterRoute greywater,
    @Meaning("Where pumped sludge goes.") @Usual("hauled-away") SludgeRoute sludge,
    @Meaning("Where stillage goes.") @Usual("compost") ResidueRoute stillage,
    @Meaning("Where cut tops go.") @Usual("compost") ResidueRoute tops) {

  /** Where greywater goes. */
  public enum GreywaterRoute {
    /** The first bed; soakage where there is none. */
    FIRST_BED,
    SOIL_ABSORPTION
  }

  /** Where pumped sludge goes. */
  public enum SludgeRoute {
    HAULED_AWAY,
    COMPOST
  }

  /** Where stillage and tops go. */
  public enum ResidueRoute {
    COMPOST,
    TANK,
    LAND
  }
}
