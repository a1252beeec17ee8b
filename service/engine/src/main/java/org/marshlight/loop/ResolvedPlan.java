package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.SiteDesign;
import org.marshlight.compost.CompostDesign;
import org.marshlight.contract.Assumption;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.GasDesign;
import org.marshlight.digester.GasPurpose;
import org.marshlight.digester.GasUse;
import org.marshlight.digester.TankDesign;
import org.marshlight.ethanol.FuelDesign;
import org.marshlight.ethanol.StillDesign;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.feed.Wastewater;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.DiversionDesign;
import org.marshlight.wetland.WaterUse;

/**
 * A legal plan with its defaults filled. Sections that it does not have are null, or empty lists.
 *
 * @param site where the home stands
 * @param people whose wastewater enters
 * @param feeds wastes fed beside it
 * @param tank the tank; null too where its outflow is given
 * @param cover what lies over its lid; bare if the plan has none
 * @param gas how the gas is kept
 * @param beds the beds
 * @param waterUse what their outflow is for
 * @param diversion valve past them
 * @param fuel how fuel alcohol is made
 * @param still the still
 * @param compost the heap
 * @param routes where streams go
 * @param given what stands in for stages upstream, filled too
 * @param assumptions what was filled
 */
record ResolvedPlan(
    SiteDesign site,
    PeopleDesign people,
    List<FeedDesign> feeds,
    TankDesign tank,
    CoverDesign cover,
    GasDesign gas,
    List<BedDesign> beds,
    WaterUse waterUse,
    DiversionDesign diversion,
    FuelDesign fuel,
    StillDesign still,
    CompostDesign compost,
    RoutesDesign routes,
    GivenDesign given,
    List<Assumption> assumptions) {

  private static final RoutesDesign NO_ROUTES = new RoutesDesign(null, null, null, null);
  private static final StillDesign NO_STILL = new StillDesign(null, null, null, null, null, null);

  static ResolvedPlan of(Plan plan, Defaults defaults) {
    List<BedDesign> beds = new ArrayList<>();
    for (int i = 0; plan.beds() != null && i < plan.beds().size(); i++) {
      beds.add(defaults.fill(plan.beds().get(i), "/beds/" + i));
    }
    FuelDesign fuel = fill(plan.fuel(), "/fuel", defaults);
    StillDesign still = fuel == null || fuel.still() != null ? still(fuel) : NO_STILL;
    return new ResolvedPlan(
        defaults.fill(plan.site(), "/site"),
        fill(plan.people(), "/people", defaults),
        plan.feeds() == null ? List.of() : plan.feeds(),
        fill(plan.tank(), "/tank", defaults),
        plan.cover() == null ? CoverDesign.UNCOVERED : fill(plan.cover(), "/cover", defaults),
        gas(plan.gas(), defaults),
        List.copyOf(beds),
        plan.waterUse() == null ? WaterUse.IRRIGATION : plan.waterUse(),
        plan.diversion(),
        fuel,
        fill(still, "/fuel/still", defaults),
        fill(plan.compost(), "/compost", defaults),
        fill(plan.routes() == null ? NO_ROUTES : plan.routes(), "/routes", defaults),
        given(plan.given(), defaults),
        defaults.assumptions());
  }

  private static GasDesign gas(GasDesign gas, Defaults defaults) {
    if (gas == null) {
      return null;
    }
    List<GasUse> uses = new ArrayList<>();
    for (int i = 0; gas.uses() != null && i < gas.uses().size(); i++) {
      GasUse use = gas.uses().get(i);
      uses.add(use.use() == GasPurpose.TANK_HEATING ? defaults.fill(use, "/gas/uses/" + i) : use);
    }
    GasDesign filled = defaults.fill(gas, "/gas");
    return new GasDesign(
        filled.storeM3(),
        List.copyOf(uses),
        filled.surplus(),
        filled.monthsOff(),
        filled.pressureKPa());
  }

  private static StillDesign still(FuelDesign fuel) {
    return fuel == null ? null : fuel.still();
  }

  private static GivenDesign given(GivenDesign given, Defaults defaults) {
    return given == null
        ? new GivenDesign(null, null, null)
        : new GivenDesign(
            fill(given.effluent(), "/given/effluent", defaults),
            fill(given.harvest(), "/given/harvest", defaults),
            fill(given.stillage(), "/given/stillage", defaults));
  }

  private static <R extends Record> R fill(R design, String pointer, Defaults defaults) {
    return design == null ? null : defaults.fill(design, pointer);
  }

  /** Whether the beds, if there are any, get water that holds human waste. */
  boolean humanOrigin() {
    return given.effluent() != null || hasPeople();
  }

  /** Whether a harvest or stillage is given of which the plan does not say what it grew on. */
  boolean humanOriginAssumed() {
    return (given.harvest() != null && given.harvest().humanOrigin() == null)
        || (given.stillage() != null && given.stillage().humanOrigin() == null);
  }

  private boolean hasPeople() {
    return people != null && people.count() > 0;
  }

  /** Whether the harvest holds what grew on human waste. */
  boolean harvestOfHumanOrigin() {
    return given.harvest() == null ? humanOrigin() : given.harvest().ofHumanOrigin();
  }

  boolean toiletOnly() {
    return people != null && people.wastewater() == Wastewater.TOILET_ONLY;
  }

  boolean hasBeds() {
    return !beds.isEmpty();
  }
}
