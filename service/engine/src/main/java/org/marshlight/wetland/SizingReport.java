package org.marshlight.wetland;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.feed.WaterStream;

/**
 * What public rules say of the area for a flow and load, and what soil would take it.
 *
 * @param flowM3Day greatest monthly flow
 * @param rules area by each rule
 * @param sizing numbers of the rules
 */
record SizingReport(
    double flowM3Day, List<WetlandEstimate.SizingRule> rules, SizingCoefficients sizing) {

  private static final double M2_PER_HA = 10_000;

  /** Retention behind the two planning equations. */
  private static final double PLANNING_DAYS_BELOW = 3;

  private static final double PLANNING_DAYS_OPEN = 7;

  /**
   * Works every rule.
   *
   * @param whole all water that comes
   * @param first year of the first bed, for depth, porosity and cold of the detention model
   * @param plannedM2 area of all beds together
   * @param sizing numbers of the rules
   */
  static SizingReport of(
      WaterStream whole, BedYear<?> first, double plannedM2, SizingCoefficients sizing) {
    double flow = 0;
    double load = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      flow = Math.max(flow, whole.volumeM3(month) / Months.days(month));
      load = Math.max(load, 1000 * whole.bod5Kg()[month] / Months.days(month));
    }
    List<WetlandEstimate.SizingRule> rules = new ArrayList<>();
    Rule.below("wetland.rule-load-30", sizing.epaLoadFor30(), "epa-wetlands-2000")
        .add(SizingRules.areaOfLoadM2(load, sizing.epaLoadFor30()), plannedM2, rules);
    Rule.below("wetland.rule-load-20", sizing.epaLoadFor20(), "epa-wetlands-2000")
        .add(SizingRules.areaOfLoadM2(load, sizing.epaLoadFor20()), plannedM2, rules);
    Rule.below("wetland.rule-flow", sizing.tvaArea(), "tva-1993")
        .add(SizingRules.areaOfFlowM2(flow, sizing.tvaArea()), plannedM2, rules);
    Rule.below("wetland.rule-people", sizing.personArea(), "gikas-tsihrintzis-2012")
        .add(
            SizingRules.areaOfPeopleM2(flow, sizing.personFlow(), sizing.personArea()),
            plannedM2,
            rules);
    Rule.below("wetland.rule-planning-below", PLANNING_DAYS_BELOW, "natural-treatment-planning")
        .add(M2_PER_HA * SizingRules.planningAreaBelowHa(flow), plannedM2, rules);
    new Rule(
            "wetland.rule-detention", first.bed().design().kind(), sizing.reedTarget(), "reed-1995")
        .add(detentionM2(first, flow, load, sizing), plannedM2, rules);
    Rule.open("wetland.rule-open-load-20", sizing.epaOpenLoadFor20(), "epa-wetlands-2000")
        .add(SizingRules.areaOfLoadM2(load, sizing.epaOpenLoadFor20()), plannedM2, rules);
    Rule.open("wetland.rule-planning-open", PLANNING_DAYS_OPEN, "natural-treatment-planning")
        .add(M2_PER_HA * SizingRules.planningAreaOpenHa(flow), plannedM2, rules);
    return new SizingReport(flow, List.copyOf(rules), sizing);
  }

  /** Reed's area for the target, in the month of coldest water of the first bed. */
  private static double detentionM2(
      BedYear<?> first, double flow, double loadGDay, SizingCoefficients sizing) {
    double inflow = flow > 0 ? loadGDay / flow : 0;
    if (inflow <= sizing.reedTarget()) {
      return 0;
    }
    BedSite bed = first.bed();
    double coldest = first.warmth().waterC()[first.warmth().coldestMonth()];
    double rate =
        TanksInSeries.rateAtTemperature(
            bed.rates().reedBod5Rate(), bed.rates().reedBod5Theta(), coldest);
    return FirstOrderDetention.areaM2(
        flow, inflow, sizing.reedTarget(), rate, bed.design().depthM(), bed.porosity());
  }

  /** Largest over smallest of the areas that are not nought; null if there is none. */
  Double spread() {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (WetlandEstimate.SizingRule rule : rules) {
      if (rule.areaM2() > 0) {
        least = Math.min(least, rule.areaM2());
        most = Math.max(most, rule.areaM2());
      }
    }
    return most > 0 ? most / least : null;
  }

  WetlandEstimate.SoilAbsorption soil(double acceptanceLM2Day) {
    if (acceptanceLM2Day <= 0) {
      return new WetlandEstimate.SoilAbsorption(
          flowM3Day, acceptanceLM2Day, false, null, null, null, null);
    }
    double area = SizingRules.soilAbsorptionAreaM2(flowM3Day, acceptanceLM2Day);
    double total = SizingRules.withReserveM2(area, sizing.reserveShare());
    double treated =
        SizingRules.soilAbsorptionAreaM2(flowM3Day, acceptanceLM2Day * sizing.treatedAcceptance());
    return new WetlandEstimate.SoilAbsorption(
        flowM3Day, acceptanceLM2Day, true, area, total - area, total, treated);
  }

  /**
   * One rule.
   *
   * @param code stable name
   * @param kind kind of bed that it is for
   * @param number the number that it turns on
   * @param source id of the source
   */
  private record Rule(String code, BedKind kind, double number, String source) {

    static Rule below(String code, double number, String source) {
      return new Rule(code, BedKind.HORIZONTAL_SUBSURFACE, number, source);
    }

    static Rule open(String code, double number, String source) {
      return new Rule(code, BedKind.FREE_WATER_SURFACE, number, source);
    }

    void add(double areaM2, double plannedM2, List<WetlandEstimate.SizingRule> rules) {
      rules.add(
          new WetlandEstimate.SizingRule(
              code,
              Sentences.text(code, Params.of("number", number)),
              kind,
              areaM2,
              plannedM2 >= areaM2,
              source));
    }
  }
}
