package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.HoursDesign;
import org.marshlight.climate.NormalsCheck;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Sentences;
import org.marshlight.contract.WireName;
import org.marshlight.digester.GasPurpose;
import org.marshlight.digester.GasUse;
import org.marshlight.economy.MoneyCheck;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.feed.FeedAnalysis;
import org.marshlight.feed.FeedCheck;
import org.marshlight.feed.FeedDesign;
import org.marshlight.feed.PersonalStreamCheck;
import org.marshlight.wetland.BedCheck;
import org.marshlight.wetland.BedDesign;

/**
 * Rules that join several fields of a plan; each field alone has already been found legal, and a
 * section with a field that is not is left out.
 */
final class PlanRules {

  /** A shuffled year has thousands of bad hours; naming a few is enough. */
  private static final int MOST_HOURS_NAMED = 20;

  private static final double ROUNDING_W_M2 = 1;

  private static final double WATER_KG_M3 = 1000;

  private PlanRules() {}

  static List<Fault> faults(Plan plan) {
    return faults(plan, LoopModel.coefficients(plan));
  }

  static List<Fault> faults(Plan plan, CoefficientSet set) {
    List<Fault> faults = new ArrayList<>();
    if (plan.site() != null) {
      climate(plan, set, faults);
      hours(plan, faults);
    }
    feeds(plan, set, faults);
    faults.addAll(PersonalStreamCheck.faults(plan.people(), set));
    gas(plan, faults);
    tank(plan, set, faults);
    if (plan.money() != null) {
      faults.addAll(MoneyCheck.faults(plan.money(), "/money"));
    }
    beds(plan, set, faults);
    effluent(plan, set, faults);
    return faults;
  }

  /** What a stage needs and the plan does not have, or has twice. */
  static List<Fault> faults(Plan plan, Stage stage) {
    List<Fault> faults = new ArrayList<>();
    GivenDesign given = plan.given() == null ? new GivenDesign(null, null, null) : plan.given();
    boolean beds = plan.beds() != null && !plan.beds().isEmpty();
    boolean water = plan.tank() != null || given.effluent() != null;
    boolean harvest = beds || given.harvest() != null;
    boolean growsHarvest = beds && given.harvest() == null;
    switch (stage) {
      case DIGESTER -> need(plan.tank() != null, "tank", stage, faults);
      case WETLAND, CROP -> {
        need(beds, "beds", stage, faults);
        need(water, "tank", stage, faults);
      }
      case ETHANOL -> {
        need(plan.fuel() != null, "fuel", stage, faults);
        need(harvest, "beds", stage, faults);
        need(!growsHarvest || water, "tank", stage, faults);
      }
      case COMPOST -> {
        need(plan.compost() != null, "compost", stage, faults);
        need(!growsHarvest || water, "tank", stage, faults);
      }
      case LOOP -> {
        need(!growsHarvest || water, "tank", stage, faults);
        need(plan.fuel() == null || harvest || given.stillage() != null, "beds", stage, faults);
        notBoth(plan.tank() != null && given.effluent() != null, "tank", faults);
        notBoth(beds && given.harvest() != null, "beds", faults);
        notBoth(plan.fuel() != null && given.stillage() != null, "fuel", faults);
      }
    }
    return faults;
  }

  private static void need(boolean there, String section, Stage stage, List<Fault> faults) {
    if (!there) {
      faults.add(
          Fault.of(
              "loop.section-needed",
              "/" + section,
              null,
              "an object, or what stands in for it under given",
              "section",
              section,
              "stage",
              WireName.of(stage)));
    }
  }

  private static void notBoth(boolean both, String section, List<Fault> faults) {
    if (both) {
      faults.add(
          Fault.of(
              "loop.given-and-section",
              "/" + section,
              null,
              "the section, or what stands in for it under given",
              "section",
              section));
    }
  }

  private static void climate(Plan plan, CoefficientSet set, List<Fault> faults) {
    boolean named = plan.site().climate().id() != null;
    boolean given = plan.site().climate().monthly() != null;
    if (named == given) {
      faults.add(
          Fault.of(
              "loop.one-of-two",
              "/site/climate",
              null,
              "exactly one of id and monthly",
              "first",
              "id",
              "second",
              "monthly"));
    } else if (given && plan.site().latitudeDeg() == null) {
      faults.add(
          Fault.of(
              "loop.missing", "/site/latitudeDeg", null, "-90 to 90 deg", "field", "latitudeDeg"));
    } else {
      faults.addAll(NormalsCheck.faults(plan.site(), set));
    }
    if (given && plan.site().climate().rainMm() != null) {
      faults.add(
          Fault.of(
              "climate.rain-beside-normals",
              "/site/climate/rainMm",
              null,
              "rain beside the id of a built-in climate"));
    }
  }

  private static void hours(Plan plan, List<Fault> faults) {
    HoursDesign hours = plan.site().hours();
    if (hours == null) {
      return;
    }
    if (Double.isNaN(PreparedSite.longitudeDeg(plan.site()))) {
      faults.add(
          Fault.of("climate.hours-need-longitude", "/site/longitudeDeg", null, "-180 to 180 deg"));
    }
    int found = 0;
    for (int hour = 0; hour < HoursDesign.HOURS && found < MOST_HOURS_NAMED; hour++) {
      double global = hours.globalWM2().get(hour);
      if (hours.diffuseWM2().get(hour) > global + ROUNDING_W_M2) {
        found++;
        faults.add(
            Fault.of(
                "climate.diffuse-above-global",
                "/site/hours/diffuseWM2/" + hour,
                hours.diffuseWM2().get(hour),
                "0 to " + Sentences.number(global) + " W/m2",
                "hour",
                hour + 1));
      }
    }
  }

  private static void feeds(Plan plan, CoefficientSet set, List<Fault> faults) {
    if (plan.feeds() == null) {
      return;
    }
    for (int i = 0; i < plan.feeds().size(); i++) {
      FeedDesign feed = plan.feeds().get(i);
      faults.addAll(
          FeedCheck.faults(feed, set.bind(FeedAnalysis.class, feed.feed()), "/feeds/" + i));
    }
  }

  private static void gas(Plan plan, List<Fault> faults) {
    if (plan.gas() == null || plan.gas().uses() == null) {
      return;
    }
    for (int i = 0; i < plan.gas().uses().size(); i++) {
      GasUse use = plan.gas().uses().get(i);
      String pointer = "/gas/uses/" + i;
      if (use.use() == GasPurpose.TANK_HEATING) {
        heating(use, pointer, faults);
      } else if (use.mealsPerDay() != null && use.use() != GasPurpose.COOKING) {
        faults.add(
            Fault.of("loop.meals-of-no-cooking", pointer + "/mealsPerDay", use.mealsPerDay(), ""));
      } else if ((use.hoursPerDay() == null) == (use.mealsPerDay() == null)) {
        faults.add(
            Fault.of(
                "loop.one-of-two",
                pointer,
                null,
                "exactly one of hoursPerDay and mealsPerDay",
                "first",
                "hoursPerDay",
                "second",
                "mealsPerDay"));
      }
    }
  }

  private static void heating(GasUse use, String pointer, List<Fault> faults) {
    if (use.setPointC() == null) {
      faults.add(
          Fault.of(
              "loop.missing", pointer + "/setPointC", null, "5 to 45 Cel", "field", "setPointC"));
    }
    if (use.hoursPerDay() != null || use.mealsPerDay() != null) {
      faults.add(
          Fault.of(
              "loop.heating-has-no-hours",
              pointer + (use.hoursPerDay() != null ? "/hoursPerDay" : "/mealsPerDay"),
              use.hoursPerDay() != null ? use.hoursPerDay() : use.mealsPerDay(),
              "a setPointC alone"));
    }
  }

  private static void beds(Plan plan, CoefficientSet set, List<Fault> faults) {
    Defaults defaults = new Defaults(set);
    List<BedDesign> filled = new ArrayList<>();
    for (BedDesign bed : plan.beds() == null ? List.<BedDesign>of() : plan.beds()) {
      filled.add(defaults.fill(bed, "/beds"));
    }
    faults.addAll(BedCheck.faults(filled, "/beds", set));
  }

  private static void effluent(Plan plan, CoefficientSet set, List<Fault> faults) {
    if (plan.given() == null || plan.given().effluent() == null) {
      return;
    }
    GivenDesign.Effluent given = new Defaults(set).fill(plan.given().effluent(), "/given/effluent");
    if (given.codMgL() < given.bod5MgL()) {
      faults.add(
          Fault.of(
              "loop.cod-below-bod5",
              "/given/effluent/codMgL",
              given.codMgL(),
              "at least " + Sentences.number(given.bod5MgL()) + " mg/L",
              "bod5MgL",
              given.bod5MgL()));
    }
  }

  /** A tank whose length leaves it narrower than a hand, or whose day's feed would fill it. */
  private static void tank(Plan plan, CoefficientSet set, List<Fault> faults) {
    if (plan.tank() == null) {
      return;
    }
    double volume =
        plan.tank().liquidVolumeM3() == null
            ? set.value("digester.default.liquid-volume")
            : plan.tank().liquidVolumeM3();
    double depth =
        plan.tank().liquidDepthM() == null
            ? set.value("digester.default.liquid-depth")
            : plan.tank().liquidDepthM();
    PlanLimits limits = set.bind(PlanLimits.class);
    double least = limits.leastTankWidthM();
    double longest = volume / depth / least;
    if (plan.tank().lengthM() != null && plan.tank().lengthM() > longest) {
      faults.add(
          Fault.of(
              "loop.tank-too-narrow",
              "/tank/lengthM",
              plan.tank().lengthM(),
              "at most " + Sentences.number(longest) + " m",
              "leastM",
              least));
    }
    double square = Math.sqrt(volume / depth);
    if (square < least) {
      faults.add(
          Fault.of(
              "loop.tank-too-narrow",
              "/tank/liquidDepthM",
              depth,
              "at most " + Sentences.number(volume / (least * least)) + " m for this volume",
              "leastM",
              least));
    }
    tankFills(plan, volume, limits, set, faults);
    double fresh = new LoadEstimate(plan, set).freshKgOnFullestDay();
    double most = volume * WATER_KG_M3 / limits.leastRetentionDays();
    if (fresh > most) {
      faults.add(
          Fault.of(
              "loop.tank-overrun",
              "/tank/liquidVolumeM3",
              plan.tank().liquidVolumeM3(),
              "at least "
                  + Sentences.number(fresh * limits.leastRetentionDays() / WATER_KG_M3)
                  + " m3 for this load",
              "freshKg",
              fresh,
              "leastDays",
              limits.leastRetentionDays()));
    }
  }

  /**
   * A tank that next to nothing enters holds what came in over many thousands of years before it is
   * in steady state. What enters and leaves in a year is then lost among the rounding of what is
   * held, and its books cannot close.
   */
  private static void tankFills(
      Plan plan, double volumeM3, PlanLimits limits, CoefficientSet set, List<Fault> faults) {
    double fresh = new LoadEstimate(plan, set).freshKgPerYear();
    double most = fresh * limits.longestFillingYears() / WATER_KG_M3;
    if (fresh > 0 && volumeM3 > most) {
      faults.add(
          Fault.of(
              "loop.tank-never-fills",
              "/tank/liquidVolumeM3",
              plan.tank().liquidVolumeM3(),
              "a greater load, none at all, or a smaller tank",
              "freshKgPerYear",
              fresh,
              "longestYears",
              limits.longestFillingYears()));
    }
  }
}
