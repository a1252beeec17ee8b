package org.marshlight.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.GasSurplus;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.BedKind;
import org.marshlight.wetland.WaterUse;

/** Which cautions a plan and its figures raise. None can be turned off. */
public final class CautionRules {

  private CautionRules() {}

  /**
   * The cautions of a plan, the gravest first.
   *
   * @param plan the plan
   * @param estimate its figures
   */
  public static List<Caution> of(Plan plan, PlanEstimate estimate) {
    Set<String> raised = new LinkedHashSet<>(CautionBook.ALWAYS);
    if (plan.fuel() != null || estimate.ethanol() != null) {
      raised.addAll(CautionBook.WITH_FUEL);
    }
    tank(plan, raised);
    gas(plan, raised);
    figures(estimate.digester(), raised);
    CoefficientSet set = LoopModel.coefficients(plan);
    figuresOfGas(plan, estimate.digester(), set.bind(SafetyCoefficients.class), raised);
    beds(plan, raised);
    if (plan.compost() != null) {
      raised.add("compost-use");
    }
    Map<String, CautionNumbers.Added> numbers = CautionNumbers.of(plan, estimate, set);
    List<Caution> cautions = new ArrayList<>();
    for (Caution caution : CautionBook.standard().all()) {
      if (raised.contains(caution.id())) {
        CautionNumbers.Added added = numbers.get(caution.id());
        cautions.add(added == null ? caution : caution.with(added.text(), added.params()));
      }
    }
    return List.copyOf(cautions);
  }

  /** Gas that is caught: what its store holds, its sulphide, and the scope of its standard. */
  private static void figuresOfGas(
      Plan plan, DigesterEstimate digester, SafetyCoefficients limits, Set<String> raised) {
    if (digester == null || plan.gas() == null || digester.annual().methaneNm3() <= 0) {
      return;
    }
    raised.add("gas-store");
    raised.add("gas-sulphide");
    if (CautionNumbers.outsideHouseholdStandard(plan, digester, limits)) {
      raised.add("beyond-household-standard");
    }
  }

  private static void tank(Plan plan, Set<String> raised) {
    if (plan.tank() == null) {
      return;
    }
    raised.add("lids");
    raised.add("flotation");
    if (plan.people() != null) {
      raised.add("wells");
    }
    boolean fed = plan.feeds() != null && !plan.feeds().isEmpty();
    boolean glazed =
        plan.cover() != null
            && plan.cover().kind() != CoverKind.EARTH
            && plan.cover().kind() != CoverKind.NONE;
    if (fed || glazed) {
      raised.add("solids-carry-over");
    }
    if (fed && plan.feeds().stream().anyMatch(feed -> feed.feed().endsWith("-manure"))) {
      raised.add("animal-by-products");
    }
    if (glazed) {
      raised.add("glass-heat");
    }
  }

  private static void gas(Plan plan, Set<String> raised) {
    if (plan.tank() == null) {
      return;
    }
    if (plan.gas() == null) {
      raised.add("gas-vented");
      return;
    }
    raised.add("air-in-store");
    raised.add("gas-heavy");
    if (plan.gas().uses() != null && !plan.gas().uses().isEmpty()) {
      raised.add("gas-indoors");
    }
    if (plan.gas().pressureKPa() == null) {
      raised.add("gas-pressure");
    }
    if (plan.gas().surplus() == GasSurplus.VENT) {
      raised.add("gas-vented");
    }
  }

  private static void figures(DigesterEstimate digester, Set<String> raised) {
    if (digester == null) {
      return;
    }
    if (digester.annual().lidAboveScaldHours() > 0
        || digester.annual().highestLiquorTemperatureC() > DigesterEstimate.SCALD_C) {
      raised.add("scald");
    }
    if (digester.monthly().ambientTemperatureC().stream().anyMatch(air -> air < 0)) {
      raised.add("frost");
    }
  }

  private static void beds(Plan plan, Set<String> raised) {
    if (plan.beds() == null || plan.beds().isEmpty()) {
      return;
    }
    raised.add("bed-plants");
    raised.add("wells");
    if (plan.beds().stream().anyMatch(bed -> bed.kind() == BedKind.FREE_WATER_SURFACE)) {
      raised.add("lids");
    }
    if (plan.waterUse() == null || plan.waterUse() == WaterUse.IRRIGATION) {
      raised.add("reuse-of-water");
    }
  }
}
