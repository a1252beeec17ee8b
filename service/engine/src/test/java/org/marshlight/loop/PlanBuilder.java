package org.marshlight.loop;

import static org.marshlight.contract.RecordOf.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.climate.ClimateChoice;
import org.marshlight.climate.SiteDesign;
import org.marshlight.compost.CompostDesign;
import org.marshlight.compost.CompostMethod;
import org.marshlight.compost.IngredientDesign;
import org.marshlight.contract.RecordShape;
import org.marshlight.digester.CoverDesign;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.GasDesign;
import org.marshlight.digester.GasPurpose;
import org.marshlight.digester.GasSurplus;
import org.marshlight.digester.GasUse;
import org.marshlight.digester.TankDesign;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.ethanol.FuelDesign;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.PeopleDesign;
import org.marshlight.wetland.BedDesign;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.WaterUse;

/**
 * Builds plans for tests. Each method returns a new builder whose plan has one section more, or
 * another one; what a section does not name keeps its default.
 */
public final class PlanBuilder {

  private final Plan plan;

  private PlanBuilder(Plan plan) {
    this.plan = plan;
  }

  /** A site and nothing on it. */
  public static PlanBuilder at(String station) {
    ClimateChoice climate = new ClimateChoice(station, null);
    return new PlanBuilder(
        record(Plan.class, "site", record(SiteDesign.class, "climate", climate)));
  }

  /**
   * An invented homestead of four in Managua, where a tank is warm without much glass: kitchen
   * scraps fed to a glazed tank, gas for cooking, a gravel bed, a still and a compost pile.
   */
  public static PlanBuilder homestead() {
    return at("managua")
        .people(4)
        .feed("kitchen-scraps", 3)
        .tank(5)
        .glass(4)
        .gas()
        .pressure(2)
        .cooking(2)
        .gravelBed(25)
        .fuelAlcohol()
        .ingredient("straw", 150);
  }

  public Plan build() {
    return plan;
  }

  /** People who are at home all the year. */
  public PlanBuilder people(int count) {
    return with("people", record(PeopleDesign.class, "count", count));
  }

  /** People who are at home for a fraction of each month, January first. */
  public PlanBuilder people(int count, List<Double> presentFraction) {
    return with(
        "people", record(PeopleDesign.class, "count", count, "presentFraction", presentFraction));
  }

  /** One more waste that is fed to the tank. */
  public PlanBuilder feed(String feed, double freshKgPerDay) {
    return with("feeds", more(plan.feeds(), FeedDesign.of(feed, freshKgPerDay)));
  }

  public PlanBuilder tank(double liquidVolumeM3) {
    return with("tank", record(TankDesign.class, "liquidVolumeM3", liquidVolumeM3));
  }

  public PlanBuilder cover(CoverKind kind) {
    return with("cover", record(CoverDesign.class, "kind", kind));
  }

  /** Glass of some area that faces where it does by default. */
  public PlanBuilder glass(double apertureM2) {
    return with(
        "cover", record(CoverDesign.class, "kind", CoverKind.GLAZED, "apertureM2", apertureM2));
  }

  /** Turns the glass, clockwise from true north. */
  public PlanBuilder facing(double azimuthDeg) {
    return with("cover", RecordShape.changed(plan.cover(), "azimuthDeg", azimuthDeg));
  }

  /** Gas that is kept and that nothing burns. */
  public PlanBuilder gas() {
    return with("gas", record(GasDesign.class));
  }

  /** One burner more. */
  public PlanBuilder cooking(double hoursPerDay) {
    GasUse use = record(GasUse.class, "use", GasPurpose.COOKING, "hoursPerDay", hoursPerDay);
    return withGas("uses", more(plan.gas().uses(), use));
  }

  public PlanBuilder pressure(double kPa) {
    return withGas("pressureKPa", kPa);
  }

  public PlanBuilder surplus(GasSurplus surplus) {
    return withGas("surplus", surplus);
  }

  /** One more bed with water below the surface. */
  public PlanBuilder gravelBed(double areaM2) {
    return with("beds", more(plan.beds(), record(BedDesign.class, "areaM2", areaM2)));
  }

  /** One more bed of open water. */
  public PlanBuilder openWater(double areaM2) {
    BedDesign bed = record(BedDesign.class, "kind", BedKind.FREE_WATER_SURFACE, "areaM2", areaM2);
    return with("beds", more(plan.beds(), bed));
  }

  public PlanBuilder waterUse(WaterUse use) {
    return with("waterUse", use);
  }

  /** Fuel alcohol from the harvest, from a pot still heated with firewood. */
  public PlanBuilder fuelAlcohol() {
    return with("fuel", record(FuelDesign.class));
  }

  /** One more ingredient of the compost pile. */
  public PlanBuilder ingredient(String ingredient, double freshKgPerYear) {
    List<IngredientDesign> before = plan.compost() == null ? null : plan.compost().ingredients();
    IngredientDesign added =
        record(IngredientDesign.class, "ingredient", ingredient, "freshKgPerYear", freshKgPerYear);
    return with(
        "compost",
        record(
            CompostDesign.class,
            "ingredients",
            more(before, added),
            "method",
            CompostMethod.TURNED_HEAP));
  }

  /** Outflow of some other tank, in place of running one. */
  public PlanBuilder givenEffluent(double flowM3Day) {
    return with(
        "given",
        record(
            GivenDesign.class,
            "effluent",
            record(GivenDesign.Effluent.class, "flowM3Day", flowM3Day)));
  }

  /** A harvest of some other bed, in place of growing one. */
  public PlanBuilder givenHarvest(String plant, double organDryKg, double starchFraction) {
    return with(
        "given",
        record(
            GivenDesign.class,
            "harvest",
            record(
                GivenDesign.Harvest.class,
                "plant",
                plant,
                "storageOrganDryKg",
                organDryKg,
                "starchFraction",
                starchFraction)));
  }

  /** Costs and prices, by name and value of each field. */
  public PlanBuilder money(Object... pairs) {
    return with("money", record(MoneyDesign.class, pairs));
  }

  /** One field of the costs and prices changed. */
  public PlanBuilder moneyField(String field, Object value) {
    return with("money", RecordShape.changed(plan.money(), field, value));
  }

  /** What would be there without the plan, by name and value of each field. */
  public PlanBuilder baseline(Object... pairs) {
    return with("baseline", record(BaselineDesign.class, pairs));
  }

  public PlanBuilder coefficient(String id, double value) {
    Map<String, Double> all = new TreeMap<>();
    if (plan.coefficients() != null) {
      all.putAll(plan.coefficients());
    }
    all.put(id, value);
    return with("coefficients", all);
  }

  private PlanBuilder withGas(String field, Object value) {
    return with("gas", RecordShape.changed(plan.gas(), field, value));
  }

  private PlanBuilder with(String section, Object value) {
    return new PlanBuilder(RecordShape.changed(plan, section, value));
  }

  private static <T> List<T> more(List<T> before, T added) {
    List<T> all = new ArrayList<>(before == null ? List.of() : before);
    all.add(added);
    return List.copyOf(all);
  }
}
