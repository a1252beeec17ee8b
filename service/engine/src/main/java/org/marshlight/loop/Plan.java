package org.marshlight.loop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.SiteDesign;
import org.marshlight.compost.CompostDesign;
import org.marshlight.contract.Meaning;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.GasDesign;
import org.marshlight.digester.TankDesign;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.ethanol.FuelDesign;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.DiversionDesign;
import org.marshlight.wetland.WaterUse;

/**
 * The whole plan. A section left out means that its stage is absent from the answer; an empty
 * object means all its stated defaults.
 *
 * @param feeds wastes fed beside it
 * @param cover what lies over its lid
 * @param waterUse what the outflow is for
 * @param diversion valve past the beds
 * @param baseline what would be there without the plan
 * @param coefficients overrides by coefficient id
 */
@Meaning("The whole plan; a section left out means that its stage is absent from the answer.")
public record Plan(
    @Meaning("Free text.") @Size(max = 200) String name,
    @NotNull @Valid @Meaning("Where the home stands.") SiteDesign site,
    @Valid @Meaning("Whose wastewater enters.") PeopleDesign people,
    @Size(max = 20) @Meaning("Wastes fed beside the household's wastewater.")
        List<@NotNull @Valid FeedDesign> feeds,
    @Valid @Meaning("The septic tank.") TankDesign tank,
    @Valid @Meaning("What lies over its lid; nothing if not given.") CoverDesign cover,
    @Valid @Meaning("How the gas is kept and used.") GasDesign gas,
    @Size(max = 8) @Meaning("Planted beds in the order of the flow.")
        List<@NotNull @Valid BedDesign> beds,
    @Meaning("What the beds' outflow is for; irrigation if not given.") WaterUse waterUse,
    @Valid @Meaning("Three-way valve past the beds; none if not given.") DiversionDesign diversion,
    @Valid @Meaning("How fuel alcohol is made.") FuelDesign fuel,
    @Valid @Meaning("The heap.") CompostDesign compost,
    @Valid @Meaning("Where streams go that have a choice.") RoutesDesign routes,
    @Valid @Meaning("What stands in for stages upstream.") GivenDesign given,
    @Valid @Meaning("Costs and prices.") MoneyDesign money,
    @Valid
        @Meaning(
            "What would be there without the plan; if not given, a septic tank under earth and"
                + " soakage, a heap for scraps and a store for manure.")
        BaselineDesign baseline,
    @Size(max = 200) @Meaning("Overrides by coefficient id, in the unit of each.")
        Map<String, Double> coefficients) {}
