package org.marshlight.economy;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;

/**
 * What would be there without the plan: it is what every part is held against, in money and in
 * gases.
 *
 * @param sewageCost money that would have to be spent on it in any case, and is credited
 * @param soilAbsorptionPerM2 cost of a square metre of soil absorption that would have to be built
 *     in any case; for a credit where {@code sewageCost} is not given
 * @param sewageYearlyCost what it would cost a year
 * @param feeds what each waste would do that the plan feeds to its tank
 */
@Meaning("What would be there without the plan: what every part is held against.")
public record BaselineDesign(
    @Meaning("What the household's wastewater would do.") @Usual("present-tank") Sewage sewage,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1e9,
            meaning =
                "Money that would have to be spent on the wastewater in any case, in the currency:"
                    + " it is credited to the plan; none if not given.")
        Double sewageCost,
    @Quantity(
            unit = "1/m2",
            min = 0,
            max = 1e6,
            meaning =
                "Cost of a square metre of soil absorption that would have to be built in any case;"
                    + " the beds are credited with the area for the tank's outflow; none if not"
                    + " given.")
        Double soilAbsorptionPerM2,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1e9,
            meaning = "Cost a year of the wastewater without the plan; none if not given.")
        Double sewageYearlyCost,
    @Size(max = 20)
        @Meaning(
            "What wastes that the plan feeds or composts would do otherwise. Fed wastes that are not"
                + " named: animals' go to a store, whey and stillage to land, used oil to refuse, all"
                + " others to a compost pile. Composted wastes that are not named would not be there.")
        List<@NotNull @Valid FeedWithout> feeds) {

  /** What a household's wastewater does without the plan. */
  public enum Sewage {
    /** It goes to a septic tank like the plan's, under earth, and to the soil. */
    PRESENT_TANK,
    /** It leaves by a sewer. */
    SEWER
  }

  /** What a waste does that is not fed to the tank. */
  public enum Fate {
    /** It is composted. */
    HEAP,
    /** It is kept in a pit or a stack until it is spread. */
    STORE,
    /** It is spread as it is. */
    LAND,
    /** It is hauled off to a dump. */
    REFUSE
  }

  /**
   * What one waste would do without the plan.
   *
   * @param yearlyCost what that would cost a year
   */
  @Meaning("What one waste would do without the plan.")
  public record FeedWithout(
      @NotNull @Meaning("Id of a feed of the catalogue.") @CatalogueId("feeds") @Size(max = 60)
          String feed,
      @Meaning("Where it would go.") @Usual("heap") Fate fate,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1e9,
              meaning = "Cost a year of that, in the currency; none if not given.")
          Double yearlyCost) {}
}
