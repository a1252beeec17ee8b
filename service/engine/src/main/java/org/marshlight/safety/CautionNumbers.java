package org.marshlight.safety;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.GasDesign;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.Plan;

/**
 * What a plan's figures add to the cautions that they raise: a sentence with its numbers, by the id
 * of the caution. Cautions of which nothing can be reckoned stand without.
 */
final class CautionNumbers {

  /** Minutes of an hour. */
  private static final double MINUTES = 60;

  private static final double PERCENT = 100;
  private static final double MJ_PER_KWH = 3.6;

  /** The rule for germs says nothing of colder tanks, Cel. */
  private static final double COLDEST_OF_RULE_C = 20;

  private static final double WARMEST_OF_RULE_C = 55;
  private static final double COOLEST_SCALD_C = 45;
  private static final double HOTTEST_SCALD_C = 100;

  private final Plan plan;
  private final PlanEstimate estimate;
  private final CoefficientSet set;
  private final SafetyCoefficients c;
  private final Map<String, Added> added = new LinkedHashMap<>();

  private CautionNumbers(Plan plan, PlanEstimate estimate, CoefficientSet set) {
    this.plan = plan;
    this.estimate = estimate;
    this.set = set;
    this.c = set.bind(SafetyCoefficients.class);
  }

  /**
   * A sentence that is added to a caution.
   *
   * @param text the sentence
   * @param params its numbers
   */
  record Added(String text, Map<String, Object> params) {}

  /** What is added, by the id of the caution. */
  static Map<String, Added> of(Plan plan, PlanEstimate estimate, CoefficientSet set) {
    CautionNumbers numbers = new CautionNumbers(plan, estimate, set);
    if (estimate.digester() != null) {
      numbers.tank(estimate.digester());
      if (plan.gas() != null) {
        numbers.gas(estimate.digester(), plan.gas());
      }
    }
    if (estimate.ethanol() != null) {
      numbers.alcohol();
    }
    if (estimate.compost() != null) {
      numbers.compost(estimate.compost());
    }
    return numbers.added;
  }

  private void add(String id, String sentence, Object... params) {
    Map<String, Object> named = Params.of(params);
    added.put(id, new Added(Sentences.text("safety." + sentence, named), named));
  }

  private void tank(DigesterEstimate tank) {
    double hottest =
        Math.max(tank.annual().highestLidTemperatureC(), tank.annual().highestLiquorTemperatureC());
    if (hottest > DigesterEstimate.SCALD_C) {
      add(
          "scald",
          "scald-at",
          "highestC",
          hottest,
          "hours",
          tank.annual().lidAboveScaldHours(),
          "seconds",
          Exposure.scaldSeconds(Math.max(COOLEST_SCALD_C, Math.min(HOTTEST_SCALD_C, hottest))));
    }
    if (tank.annual().stagnationTemperatureC() != null) {
      stagnation(tank.annual().stagnationTemperatureC());
    }
    if (plan.people() != null) {
      sludge(tank);
    }
  }

  private void stagnation(double stagnationC) {
    add(
        "glass-heat",
        stagnationC > Math.min(c.plasticPipeC(), c.foamC())
            ? "stagnation-above"
            : "stagnation-below",
        "stagnationC",
        stagnationC,
        "pipeC",
        c.plasticPipeC(),
        "foamC",
        c.foamC(),
        "paneC",
        c.plasticPaneC(),
        "timberC",
        c.timberC());
  }

  private void sludge(DigesterEstimate tank) {
    double mean = tank.annual().meanLiquorTemperatureC();
    if (mean < COLDEST_OF_RULE_C) {
      add("pathogens", "sludge-too-cold", "liquorC", mean, "leastC", COLDEST_OF_RULE_C);
    } else {
      add(
          "pathogens",
          "sludge-days",
          "liquorC",
          mean,
          "days",
          Exposure.digestionDays(Math.min(WARMEST_OF_RULE_C, mean)));
    }
  }

  private void gas(DigesterEstimate tank, GasDesign gas) {
    Double methane = tank.gas().methaneFraction();
    if (methane == null || tank.annual().methaneNm3() <= 0) {
      return;
    }
    add(
        "gas-heavy",
        "relative-density",
        "methanePercent",
        PERCENT * methane,
        "density",
        RoomGas.relativeDensity(methane));
    double dayM3 = Months.sum(Months.array(tank.monthly().meteredGasM3())) / Months.DAYS_PER_YEAR;
    if (gas.uses() != null && !gas.uses().isEmpty()) {
      roomLeak(dayM3, methane);
    }
    sulphide(tank, methane);
    store(tank, gas, methane);
    if (outsideHouseholdStandard(plan, tank, c)) {
      add(
          "beyond-household-standard",
          "household-standard",
          "energyMWh",
          tank.annual().gasEnergyKWh() / 1000,
          "limitMWh",
          c.householdKWh() / 1000,
          "pressureKPa",
          gas.pressureKPa() == null ? "unknown" : gas.pressureKPa(),
          "limitKPa",
          c.householdKPa());
    }
  }

  /** Whether a plan is larger than household biogas by its standard. */
  static boolean outsideHouseholdStandard(Plan plan, DigesterEstimate tank, SafetyCoefficients c) {
    return tank.annual().gasEnergyKWh() > c.householdKWh()
        || (plan.gas() != null
            && plan.gas().pressureKPa() != null
            && plan.gas().pressureKPa() > c.householdKPa());
  }

  private void roomLeak(double dayM3, double methane) {
    double leak = dayM3 / c.leakHours();
    double air = c.roomM3() * c.airChangesPerHour();
    double share = c.warningShare() * c.flammableLimit();
    OptionalDouble hours = RoomGas.time(share, c.roomM3(), leak, methane, air);
    OptionalDouble otherHours =
        RoomGas.time(c.warningShare() * c.otherFlammableLimit(), c.roomM3(), leak, methane, air);
    Object[] room = {
      "dayM3",
      dayM3,
      "leakHours",
      c.leakHours(),
      "roomM3",
      c.roomM3(),
      "airChanges",
      c.airChangesPerHour(),
      "sharePercent",
      PERCENT * c.warningShare(),
      "limitPercent",
      PERCENT * c.flammableLimit(),
      "otherLimitPercent",
      PERCENT * c.otherFlammableLimit(),
      "airM3Hour",
      RoomGas.airNeededM3Hour(leak, methane, share),
      "airings",
      RoomGas.purgeAirChanges(share, share * c.alarmShare(), c.mixing()),
    };
    if (hours.isEmpty() || hours.getAsDouble() > c.leakHours()) {
      add("gas-indoors", "room-leak-held", room);
      return;
    }
    Object[] timed = java.util.Arrays.copyOf(room, room.length + 4);
    timed[room.length] = "minutes";
    timed[room.length + 1] = MINUTES * hours.getAsDouble();
    timed[room.length + 2] = "otherMinutes";
    timed[room.length + 3] =
        otherHours.isPresent() ? (Object) (MINUTES * otherHours.getAsDouble()) : "never";
    add("gas-indoors", "room-leak", timed);
  }

  private void sulphide(DigesterEstimate tank, double methane) {
    if (tank.gas().hydrogenSulphideHighPpm() == null) {
      return;
    }
    double share = c.alarmShare() * c.flammableLimit();
    double likely = RoomGas.roomSulphidePpm(tank.gas().hydrogenSulphidePpm(), share, methane);
    double high = RoomGas.roomSulphidePpm(tank.gas().hydrogenSulphideHighPpm(), share, methane);
    add(
        "gas-sulphide",
        high > c.sulphideCeilingPpm() ? "sulphide-first" : "sulphide-later",
        "gasPpm",
        tank.gas().hydrogenSulphidePpm(),
        "gasHighPpm",
        tank.gas().hydrogenSulphideHighPpm(),
        "roomPpm",
        likely,
        "roomHighPpm",
        high,
        "alarmPercent",
        PERCENT * c.alarmShare(),
        "ceilingPpm",
        c.sulphideCeilingPpm());
  }

  private void store(DigesterEstimate tank, GasDesign gas, double methane) {
    double store = gas.storeM3() == null ? set.value("digester.default.gas-store") : gas.storeM3();
    double perNm3 = tank.annual().gasEnergyKWh() / tank.annual().methaneNm3();
    add(
        "gas-store",
        "store-energy",
        "storeM3",
        store,
        "energyMJ",
        tank.gas().storeHoldsNm3() * perNm3 * MJ_PER_KWH,
        "airM3",
        RoomGas.flammableM3(store, methane, c.flammableLimit()),
        "otherAirM3",
        RoomGas.flammableM3(store, methane, c.otherFlammableLimit()),
        "limitPercent",
        PERCENT * c.flammableLimit(),
        "otherLimitPercent",
        PERCENT * c.otherFlammableLimit());
  }

  private void alcohol() {
    double litres = estimate.ethanol().annual().ethanolL();
    double proofGallons = Exposure.proofGallons(litres);
    add(
        "permits",
        proofGallons > c.smallPlantProofGallons() ? "above-small-plant" : "below-small-plant",
        "ethanolL",
        litres,
        "proofGallons",
        proofGallons,
        "limit",
        c.smallPlantProofGallons());
    if (estimate.ethanol().still().flashPointC() != null) {
      add(
          "ethanol-fire",
          "flash-point",
          "strengthPercent",
          estimate.ethanol().still().productStrengthPercentVol(),
          "flashC",
          estimate.ethanol().still().flashPointC());
    }
  }

  private void compost(CompostEstimate compost) {
    if (compost.hygiene().heatWantingDays() != null) {
      add(
          "compost-use",
          "compost-days",
          "heatDays",
          compost.hygiene().heatWantingDays(),
          "storageDays",
          compost.hygiene().storageWantingDays());
    }
  }
}
