package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.SiteClimate;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.contract.WireName;
import org.marshlight.feed.Party;

/** What is worth saying of beds beside their figures. */
final class WetlandNotices {

  private WetlandNotices() {}

  static List<Notice> of(BedChain<?> chain, SiteClimate climate, WetlandEstimate estimate) {
    List<Notice> notices = new ArrayList<>();
    notices.add(Notice.of("wetland.not-for-raw-food"));
    water(chain, estimate, notices);
    for (int i = 0; i < estimate.beds().size(); i++) {
      WetlandEstimate.Bed bed = estimate.beds().get(i);
      adequacy(bed, notices);
      mulch(chain.years().get(i), climate, notices);
      if (bed.ice() != null) {
        ice(bed, chain.years().get(i).bed().design().depthM(), notices);
      }
    }
    use(estimate, notices);
    if (estimate.fitness().use() == WaterUse.IRRIGATION) {
      notices.add(Notice.of("wetland.salts-are-usual"));
    }
    if (estimate.sizingRuleSpread() != null) {
      notices.add(Notice.of("wetland.rules-disagree", "factor", estimate.sizingRuleSpread()));
    }
    if (!estimate.soilAbsorption().suitable()) {
      notices.add(Notice.of("wetland.soil-not-suitable"));
    }
    return List.copyOf(notices);
  }

  private static void water(BedChain<?> chain, WetlandEstimate estimate, List<Notice> notices) {
    if (chain.inflow().annualVolumeM3() <= 0) {
      notices.add(Notice.of("wetland.nothing-flows"));
    }
    if (!estimate.withoutOutflow().isEmpty()) {
      List<Integer> months =
          estimate.withoutOutflow().stream().map(WetlandEstimate.NoOutflow::month).toList();
      notices.add(Notice.of("wetland.no-outflow", "months", listed(months)));
    }
    double least = Double.POSITIVE_INFINITY;
    for (BedYear<?> year : chain.years()) {
      for (int month = 0; month < Months.COUNT; month++) {
        least = Math.min(least, year.water().flushed()[month]);
      }
    }
    if (least < 1) {
      notices.add(
          Notice.of(
              "wetland.salts-stay",
              "times",
              chain.years().get(0).bed().c().greatestConcentration()));
    }
    if (estimate.diversion() != null && !estimate.diversion().months().isEmpty()) {
      notices.add(Notice.of("wetland.diverted", "months", listed(estimate.diversion().months())));
    }
  }

  private static void adequacy(WetlandEstimate.Bed bed, List<Notice> notices) {
    WetlandEstimate.Loading loading = bed.loading();
    String kind = bed.kind() == BedKind.FREE_WATER_SURFACE ? "wetland.open-" : "wetland.";
    if (loading.answer() == WetlandEstimate.Adequacy.POOR) {
      notices.add(
          Notice.of(
              kind + "heavily-loaded",
              "bed",
              bed.name(),
              "load",
              loading.bod5GM2Day(),
              "limit",
              loading.warnGM2Day()));
    } else if (loading.answer() == WetlandEstimate.Adequacy.INSUFFICIENT) {
      notices.add(
          Notice.of(
              kind + "overloaded",
              "bed",
              bed.name(),
              "load",
              loading.bod5GM2Day(),
              "warn",
              loading.warnGM2Day(),
              "limit",
              loading.refuseGM2Day()));
    }
    WetlandEstimate.Passage passage = bed.passage();
    if (passage != null && passage.answer() == WetlandEstimate.Adequacy.INSUFFICIENT) {
      notices.add(
          Notice.of(
              "wetland.bed-floods",
              "bed",
              bed.name(),
              "flow",
              passage.greatestFlowM3Day(),
              "capacity",
              passage.capacityM3Day(),
              "width",
              passage.neededWidthM()));
    }
  }

  private static void mulch(BedYear<?> year, SiteClimate climate, List<Notice> notices) {
    BedSite bed = year.bed();
    double coldest = climate.airC()[0];
    for (int month = 0; month < Months.COUNT; month++) {
      coldest = Math.min(coldest, climate.airC()[month]);
    }
    String name = Party.bed(bed.index());
    if (bed.belowSurface()
        && coldest < bed.c().frostAirTemperature()
        && bed.design().mulchM() < bed.c().mulchAdvised()) {
      notices.add(Notice.of("wetland.mulch-advised", "bed", name, "mulch", bed.c().mulchAdvised()));
    }
  }

  /** A bed that is frozen while water is led in does not do what its figures say. */
  private static void ice(WetlandEstimate.Bed bed, double depthM, List<Notice> notices) {
    WetlandEstimate.Ice ice = bed.ice();
    double thickest = ice.depthFraction() * depthM;
    if (ice.blocks()) {
      notices.add(
          Notice.severe(
              "wetland.frozen",
              "bed",
              bed.name(),
              "ice",
              thickest,
              "depth",
              depthM,
              "months",
              listed(ice.months())));
    } else if (ice.depthFraction() >= ice.limitFraction()) {
      notices.add(Notice.of("wetland.ice", "bed", bed.name(), "ice", thickest, "depth", depthM));
    }
  }

  private static void use(WetlandEstimate estimate, List<Notice> notices) {
    List<Integer> months = new ArrayList<>();
    for (int month = 0; month < Months.COUNT; month++) {
      if (estimate.fitness().monthly().get(month) == WetlandEstimate.UseAnswer.UNFIT) {
        months.add(month + 1);
      }
    }
    if (!months.isEmpty()) {
      List<String> parameters =
          estimate.fitness().parameters().stream()
              .filter(p -> p.monthly().contains(WetlandEstimate.UseAnswer.UNFIT))
              .map(WetlandEstimate.UseVerdict::parameter)
              .toList();
      notices.add(
          Notice.of(
              "wetland.outflow-unfit",
              "use",
              WireName.of(estimate.fitness().use()).replace('-', ' '),
              "months",
              listed(months),
              "parameters",
              String.join(", ", parameters)));
    }
  }

  private static String listed(List<Integer> months) {
    return String.join(", ", months.stream().map(String::valueOf).toList());
  }
}
