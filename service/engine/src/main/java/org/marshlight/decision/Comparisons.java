package org.marshlight.decision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.TiltedYear;
import org.marshlight.contract.Assumption;
import org.marshlight.digester.TankYears;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.economy.FinanceTerms;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/** What all comparisons of one plan share: site, coefficients, prices, and runs made so far. */
final class Comparisons {

  private static final double WH_PER_KWH = 1000;

  private static final BaselineDesign NOTHING_SAID =
      new BaselineDesign(null, null, null, null, null);

  private final Plan plan;
  private final PreparedSite site;
  private final CoefficientSet set;
  private final TankYears tanks;
  private final Stage far;
  private final MoneyDesign money;
  private final BaselineDesign baseline;
  private final double charged;
  private final List<Assumption> assumptions;
  private final Map<Plan, LoopRun> wholes = new HashMap<>();
  private final Map<Plan, LoopRun> tanksAlone = new HashMap<>();
  private final Map<Plan, Effects> effects = new HashMap<>();
  private double sunOnGlassKWhM2 = Double.NaN;

  /** Comparisons of a plan whose own costs are all that there is to pay. */
  Comparisons(Plan plan, PreparedSite site, CoefficientSet set, TankYears tanks, Stage far) {
    this(plan, site, set, tanks, far, 0);
  }

  /**
   * @param charged what is to be paid beside the cost of a part, for a change of the plan that the
   *     part needs
   * @param far how far plans are run: the whole loop, or the tank where that alone decides
   */
  Comparisons(
      Plan plan,
      PreparedSite site,
      CoefficientSet set,
      TankYears tanks,
      Stage far,
      double charged) {
    this.plan = plan;
    this.charged = charged;
    this.far = far;
    this.site = site;
    this.set = set;
    this.tanks = tanks;
    Defaults defaults = new Defaults(set);
    money = defaults.fill(plan.money() == null ? MoneyDesign.NOTHING : plan.money(), "/money");
    baseline = defaults.fill(plan.baseline() == null ? NOTHING_SAID : plan.baseline(), "/baseline");
    List<Assumption> taken = new ArrayList<>(defaults.assumptions());
    taken.removeIf(a -> plan.money() == null && isOfMoneyAlone(a));
    taken.addAll(new FeedFates(WasteElsewhere.fed(plan, set), baseline, set).assumptions());
    assumptions = List.copyOf(taken);
  }

  /** Without a money section only the displaced fuel matters: for its gases. */
  private static boolean isOfMoneyAlone(Assumption assumption) {
    return assumption.pointer().startsWith("/money")
        && !assumption.pointer().equals("/money/displacedFuel");
  }

  Plan plan() {
    return plan;
  }

  PreparedSite site() {
    return site;
  }

  CoefficientSet set() {
    return set;
  }

  /** Costs and prices, defaults filled. */
  MoneyDesign money() {
    return money;
  }

  /** What is to be paid beside the cost of a part, for the change of the plan that it needs. */
  double charged() {
    return charged;
  }

  /** What would be there without the plan, defaults filled. */
  BaselineDesign baseline() {
    return baseline;
  }

  /** What was taken for prices and baselines that the plan does not give. */
  List<Assumption> assumptions() {
    return assumptions;
  }

  /** People of the household, the usual number where the plan does not say; zero without any. */
  int people() {
    if (plan.people() == null) {
      return 0;
    }
    return plan.people().count() == null
        ? (int) set.value("feed.default.people")
        : plan.people().count();
  }

  /** The fuel that the gas takes the place of. */
  HeatSource displaced() {
    return set.bind(HeatSource.class, money.displacedFuel());
  }

  /** The terms of money. */
  FinanceTerms terms() {
    return FinanceTerms.of(money, set);
  }

  /** The chain of a plan that differs from this one, as far as it is run here. */
  LoopRun run(Plan changed) {
    return wholes.computeIfAbsent(changed, other -> LoopModel.run(other, far, site, set, tanks));
  }

  /** The tank alone of a plan that differs from this one. */
  LoopRun tank(Plan changed) {
    LoopRun whole = wholes.get(changed);
    return whole != null
        ? whole
        : tanksAlone.computeIfAbsent(
            changed, other -> LoopModel.run(other, Stage.DIGESTER, site, set, tanks));
  }

  /** Takes up a run that was made already. */
  void know(Plan known, LoopRun run) {
    wholes.put(known, run);
  }

  /** What the whole chain of a plan comes to. */
  Effects effects(Plan changed) {
    return effects.computeIfAbsent(changed, other -> Effects.of(this, other, run(other)));
  }

  /** Sun on the plane of the glass in a year. */
  double sunOnGlassKWhM2(Sizes sizes) {
    if (Double.isNaN(sunOnGlassKWhM2)) {
      TiltedYear sun = site.year().tilted(sizes.cover().tiltDeg(), sizes.cover().azimuthDeg());
      double sum = 0;
      for (int hour = 0; hour < ClimateYear.HOURS; hour++) {
        sum += sun.beamWM2()[hour] + sun.skyWM2()[hour] + sun.groundWM2()[hour];
      }
      sunOnGlassKWhM2 = sum / WH_PER_KWH;
    }
    return sunOnGlassKWhM2;
  }
}
