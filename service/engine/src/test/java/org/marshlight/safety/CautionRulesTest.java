package org.marshlight.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.contract.Months;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.GasSurplus;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanBuilder;
import org.marshlight.loop.Stage;
import org.marshlight.wetland.WaterUse;

/**
 * Which plan raises which caution, by table. The rows are written from what each caution says, not
 * from the rules: a tank whose methane goes to the air warns of that whoever chose it.
 */
class CautionRulesTest {

  private static final PlanBuilder LAND = PlanBuilder.at("managua");
  private static final PlanBuilder PILE = LAND.ingredient("straw", 150);
  private static final PlanBuilder TANK = LAND.people(4).tank(4);
  private static final PlanBuilder FED = LAND.tank(4).feed("kitchen-scraps", 5);
  private static final PlanBuilder KEPT_GAS = TANK.gas().pressure(2);
  private static final PlanBuilder IDLE_GAS = LAND.people(0).tank(4).gas().pressure(2);
  private static final PlanBuilder BED = LAND.givenEffluent(0.4).gravelBed(20);
  private static final PlanBuilder ALCOHOL =
      LAND.givenHarvest("broadleaf-cattail", 100, 0.4).fuelAlcohol();

  private static final Map<Plan, Answer<PlanEstimate>> ANSWERS = new ConcurrentHashMap<>();

  /**
   * One row of the table.
   *
   * @param caution id of the caution
   * @param raised whether the plan raises it
   * @param because what of the plan does, or does not
   * @param plan the plan
   */
  private record Row(String caution, boolean raised, String because, Plan plan) {
    @Override
    public String toString() {
      return caution + (raised ? " with " : " not with ") + because;
    }
  }

  static Stream<Row> rows() {
    return Stream.of(
        raised("methane-explosion", "a compost pile alone", PILE),
        raised("tank-atmosphere", "a compost pile alone", PILE),
        raised("pathogens", "a compost pile alone", PILE),
        raised("local-codes", "a compost pile alone", PILE),
        raised("ethanol-fire", "a still", ALCOHOL),
        absent("ethanol-fire", "a tank alone", TANK),
        raised("distilling", "a still", ALCOHOL),
        raised("distilling", "a still that was not asked for", TANK.gravelBed(20).fuelAlcohol()),
        absent("distilling", "a tank alone", TANK),
        raised("ethanol-poisoning", "a still", ALCOHOL),
        absent("ethanol-poisoning", "a tank alone", TANK),
        raised("permits", "a still", ALCOHOL),
        absent("permits", "a tank alone", TANK),
        raised("gas-indoors", "a burner", KEPT_GAS.cooking(2)),
        absent("gas-indoors", "gas that nothing burns", KEPT_GAS),
        raised("gas-heavy", "gas that is kept", KEPT_GAS),
        absent("gas-heavy", "gas that is not kept", TANK),
        raised("gas-sulphide", "gas that is kept", KEPT_GAS),
        absent("gas-sulphide", "gas that is not kept", TANK),
        absent("gas-sulphide", "a tank that nothing enters", IDLE_GAS),
        raised("gas-store", "gas that is kept", KEPT_GAS),
        absent("gas-store", "gas that is not kept", TANK),
        absent("gas-store", "a tank that nothing enters", IDLE_GAS),
        raised("beyond-household-standard", "6 kPa", TANK.gas().pressure(6)),
        raised("beyond-household-standard", "a tank of a large stable", stable(4500, 300)),
        absent("beyond-household-standard", "the household's gas at 5 kPa", TANK.gas().pressure(5)),
        absent("beyond-household-standard", "a tank of a small stable", stable(400, 30)),
        raised("gas-pressure", "a gas holder of unknown pressure", TANK.gas()),
        absent("gas-pressure", "a gas holder of 2 kPa", KEPT_GAS),
        absent("gas-pressure", "gas that is not kept", TANK),
        raised("gas-vented", "gas that is not kept", TANK),
        raised("gas-vented", "surplus vented by choice", KEPT_GAS.surplus(GasSurplus.VENT)),
        absent("gas-vented", "surplus flared by choice", KEPT_GAS.surplus(GasSurplus.FLARE)),
        absent("gas-vented", "surplus flared by default", KEPT_GAS),
        absent("gas-vented", "no tank", BED),
        raised("air-in-store", "gas that is kept", KEPT_GAS),
        absent("air-in-store", "gas that is not kept", TANK),
        raised("lids", "a tank", TANK),
        raised("lids", "open water", LAND.givenEffluent(0.4).openWater(20)),
        absent("lids", "a gravel bed", BED),
        raised("glass-heat", "glass", TANK.glass(4)),
        absent("glass-heat", "earth", TANK.cover(CoverKind.EARTH)),
        absent("glass-heat", "a bare lid", TANK.cover(CoverKind.NONE)),
        raised("scald", "glass in a desert", at("el-paso").glass(8)),
        absent("scald", "earth in a cool place", at("burlington").cover(CoverKind.EARTH)),
        raised("wells", "wastewater in a tank", TANK),
        raised("wells", "wastewater in a bed", BED),
        absent("wells", "kitchen scraps in a tank", FED),
        absent("wells", "a compost pile", PILE),
        raised("flotation", "a tank", TANK),
        absent("flotation", "a gravel bed", BED),
        raised("frost", "a cold winter", at("burlington")),
        absent("frost", "a place without winter", TANK),
        raised("animal-by-products", "cattle manure", TANK.feed("cattle-manure", 10)),
        absent("animal-by-products", "grass", TANK.feed("garden-grass", 10)),
        absent("animal-by-products", "people alone", TANK),
        raised("solids-carry-over", "scraps fed to a bare tank", TANK.feed("kitchen-scraps", 2)),
        raised("solids-carry-over", "glass over an unfed tank", TANK.glass(4)),
        absent("solids-carry-over", "an unfed tank under earth", TANK.cover(CoverKind.EARTH)),
        raised("reuse-of-water", "irrigation by default", BED),
        raised("reuse-of-water", "irrigation by choice", BED.waterUse(WaterUse.IRRIGATION)),
        absent("reuse-of-water", "soil absorption", BED.waterUse(WaterUse.SOIL_ABSORPTION)),
        absent("reuse-of-water", "release", BED.waterUse(WaterUse.SURFACE_DISCHARGE)),
        absent("reuse-of-water", "no bed", TANK),
        raised("bed-plants", "a gravel bed", BED),
        absent("bed-plants", "no bed", TANK),
        raised("compost-use", "a compost pile", PILE),
        absent("compost-use", "no compost pile", TANK));
  }

  private static Row raised(String caution, String because, PlanBuilder plan) {
    return new Row(caution, true, because, plan.build());
  }

  private static Row absent(String caution, String because, PlanBuilder plan) {
    return new Row(caution, false, because, plan.build());
  }

  private static PlanBuilder at(String station) {
    return PlanBuilder.at(station).people(4).tank(4);
  }

  private static PlanBuilder stable(double manureKgPerDay, double tankM3) {
    return LAND.tank(tankM3).feed("cattle-manure", manureKgPerDay).gas().pressure(2);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void aPlanRaisesWhatItBrings(Row row) {
    List<String> ids = answer(row.plan()).cautions().stream().map(Caution::id).toList();
    assertThat(ids.contains(row.caution())).as(row.toString()).isEqualTo(row.raised());
  }

  @Test
  void theTableHasBothSidesOfEveryCaution() {
    Set<String> all =
        CautionBook.standard().all().stream().map(Caution::id).collect(Collectors.toSet());
    assertThat(cautions(true)).isEqualTo(all);
    all.removeAll(CautionBook.ALWAYS);
    assertThat(cautions(false)).isEqualTo(all);
  }

  private static Set<String> cautions(boolean raised) {
    return rows()
        .filter(row -> row.raised() == raised)
        .map(Row::caution)
        .collect(Collectors.toSet());
  }

  /** ISO 23590 as the book has it: household biogas up to 100 MWh a year and 5 kPa. */
  @Test
  void theStandardForHouseholdsIsToldWithThePlansOwnNumbers() {
    Caution large = caution(stable(4500, 300), "beyond-household-standard");
    assertThat((Double) large.params().get("energyMWh")).isGreaterThan(100);
    assertThat(large.params()).containsEntry("limitMWh", 100.0).containsEntry("pressureKPa", 2.0);
    Caution unknown =
        caution(TANK.gas().coefficient("safety.household-energy", 1), "beyond-household-standard");
    assertThat(unknown.params()).containsEntry("pressureKPa", "unknown");
    assertThat(unknown.text()).contains("unknown");
  }

  /**
   * The minutes are those in which a well-mixed room, stepped through V dC/dt = q x - (Q + q) C,
   * gets to a quarter of the lower limit, and the same by the published formula.
   */
  @Test
  void aLeakFillsARoomInTheMinutesThatAreTold() {
    PlanBuilder plan = stable(400, 30).cooking(2);
    Caution caution = caution(plan, "gas-indoors");
    double leakM3Hour = meteredM3Day(plan);
    double methane = tank(plan).gas().methaneFraction();
    double roomM3 = 30;
    double airM3Hour = 0.35 * roomM3;
    double share = 0.25 * 0.044;

    double minutes = (Double) caution.params().get("minutes");
    assertThat((Double) caution.params().get("dayM3")).isCloseTo(leakM3Hour, within(1e-9));
    assertThat(minutes)
        .isCloseTo(
            60 * RoomGas.hoursTo(share, roomM3, leakM3Hour, methane, airM3Hour), within(1e-9));
    assertThat(methaneAfter(minutes, roomM3, leakM3Hour, methane, airM3Hour))
        .isCloseTo(share, within(1e-5));
    double otherMinutes = (Double) caution.params().get("otherMinutes");
    assertThat(methaneAfter(otherMinutes, roomM3, leakM3Hour, methane, airM3Hour))
        .isCloseTo(0.25 * 0.05, within(1e-5));
    assertThat(caution.text()).contains("would be reached after");
  }

  private static double methaneAfter(
      double minutes, double roomM3, double leakM3Hour, double methane, double airM3Hour) {
    int steps = 100_000;
    double hours = minutes / 60 / steps;
    double held = 0;
    for (int step = 0; step < steps; step++) {
      held += hours * (leakM3Hour * methane - (airM3Hour + leakM3Hour) * held) / roomM3;
    }
    return held;
  }

  @Test
  void aLeakThatALargeOrAiryRoomThinsOutIsToldAsHeld() {
    PlanBuilder plan = KEPT_GAS.cooking(2);
    double leakM3Hour = meteredM3Day(plan);
    double methane = tank(plan).gas().methaneFraction();
    double share = 0.25 * 0.044;

    PlanBuilder large = plan.coefficient("safety.room-volume", 10_000);
    Caution slow = caution(large, "gas-indoors");
    assertThat(slow.text()).contains("would stay below");
    assertThat(slow.params()).doesNotContainKey("minutes");
    double enoughAir = RoomGas.airNeededM3Hour(leakM3Hour, methane, share);
    assertThat((Double) slow.params().get("airM3Hour")).isCloseTo(enoughAir, within(1e-9));

    PlanBuilder justAiry = plan.coefficient("safety.room-air-changes", 1.001 * enoughAir / 30);
    assertThat(caution(justAiry, "gas-indoors").text()).contains("would stay below");
    assertThat(RoomGas.steadyFraction(leakM3Hour, methane, 1.001 * enoughAir)).isLessThan(share);
    assertThat(RoomGas.steadyFraction(leakM3Hour, methane, 0.999 * enoughAir)).isGreaterThan(share);
  }

  /** In a large and close room the leak ends before it has brought the air to the share. */
  @Test
  void aLeakThatEndsTooSoonIsToldAsHeld() {
    PlanBuilder plan = KEPT_GAS.cooking(2);
    double leakM3Hour = meteredM3Day(plan);
    double methane = tank(plan).gas().methaneFraction();
    double share = 0.25 * 0.044;
    double roomM3 = 200 * leakM3Hour;
    double airM3Hour = 0.01 * roomM3;
    PlanBuilder close =
        plan.coefficient("safety.room-volume", roomM3).coefficient("safety.room-air-changes", 0.01);

    assertThat(RoomGas.steadyFraction(leakM3Hour, methane, airM3Hour)).isGreaterThan(share);
    assertThat(methaneAfter(60, roomM3, leakM3Hour, methane, airM3Hour)).isLessThan(share);
    assertThat(caution(close, "gas-indoors").text()).contains("would stay below");
  }

  private static double meteredM3Day(PlanBuilder plan) {
    return Months.sum(Months.array(tank(plan).monthly().meteredGasM3())) / 365;
  }

  private static DigesterEstimate tank(PlanBuilder plan) {
    return answer(plan.build()).estimate().digester();
  }

  private static Caution caution(PlanBuilder plan, String id) {
    return answer(plan.build()).cautions().stream()
        .filter(caution -> caution.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Answers to the stage that alone can raise what the plan raises: verdicts raise nothing. */
  private static Answer<PlanEstimate> answer(Plan plan) {
    return ANSWERS.computeIfAbsent(
        plan, p -> Marshlight.estimate(new Marshlight.Request(p, stage(p), false, null)));
  }

  private static Stage stage(Plan plan) {
    if (plan.tank() != null) {
      return Stage.DIGESTER;
    }
    if (plan.beds() != null) {
      return Stage.WETLAND;
    }
    return plan.fuel() != null ? Stage.ETHANOL : Stage.COMPOST;
  }
}
