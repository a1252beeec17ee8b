package org.marshlight.decision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.marshlight.compost.CompostEstimate;
import org.marshlight.contract.Months;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.digester.CoverKind;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;
import org.marshlight.loop.Closure;
import org.marshlight.loop.Conserved;
import org.marshlight.loop.Flow;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;
import org.marshlight.wetland.WetlandEstimate.Adequacy;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/** Runs a plan with and without each of its parts and says which are worth building. */
public final class VerdictModel {

  private final Plan plan;
  private final LoopRun with;
  private final PreparedSite site;
  private final CoefficientSet set;
  private final DecisionCoefficients thresholds;

  private VerdictModel(Plan plan, LoopRun with, PreparedSite site, CoefficientSet set) {
    this.plan = plan;
    this.with = with;
    this.site = site;
    this.set = set;
    this.thresholds = set.bind(DecisionCoefficients.class);
  }

  /**
   * The verdicts of a plan.
   *
   * @param plan the plan
   * @param with its whole chain as run
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   */
  public static List<Verdict> verdicts(
      Plan plan, LoopRun with, PreparedSite site, CoefficientSet set) {
    VerdictModel model = new VerdictModel(plan, with, site, set);
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(model.gasCapture());
    verdicts.add(model.glass());
    verdicts.add(model.nightInsulation());
    verdicts.add(model.beds());
    verdicts.add(model.fuelAlcohol());
    verdicts.add(model.compost());
    return verdicts.stream().filter(Objects::nonNull).toList();
  }

  private LoopRun without(Plan changed, Stage stage) {
    return LoopModel.run(changed, stage, site, set);
  }

  private static Worth worth(double value, double yes, double marginal) {
    return value >= yes ? Worth.YES : value >= marginal ? Worth.MARGINAL : Worth.NO;
  }

  private double usefulKWh(DigesterEstimate digester) {
    return digester.annual().gasUsedKWh() * thresholds.burnerEfficiency();
  }

  private Verdict gasCapture() {
    if (with.digester() == null || plan.gas() == null) {
      return null;
    }
    DigesterEstimate digester = with.digester().estimate();
    double useful = usefulKWh(digester);
    List<Reason> reasons = new ArrayList<>();
    reasons.add(
        Reason.of(
            "decision.gas-useful",
            "gasEnergyKWh",
            digester.annual().gasEnergyKWh(),
            "gasUsedKWh",
            digester.annual().gasUsedKWh(),
            "usefulKWh",
            useful,
            "share",
            useful / thresholds.gasYes(),
            "threshold",
            thresholds.gasYes()));
    if (digester.annual().cookingDemandMetFraction() != null) {
      double worst = Collections.min(digester.monthly().cookingDemandMetFraction());
      reasons.add(
          Reason.of(
              "decision.cooking-met",
              "metPercent",
              100 * digester.annual().cookingDemandMetFraction(),
              "worstPercent",
              100 * worst));
    }
    reasons.add(Reason.of("decision.gas-without", "vented", digester.annual().methaneNm3()));
    Worth worth = worth(useful, thresholds.gasYes(), thresholds.gasMarginal());
    if (plan.gas().pressureKPa() != null) {
      return new Verdict(Component.GAS_CAPTURE, worth, List.copyOf(reasons), List.of());
    }
    return new Verdict(
        Component.GAS_CAPTURE,
        worth == Worth.YES ? Worth.MARGINAL : worth,
        List.copyOf(reasons),
        List.of(Reason.of("decision.pressure-not-shown-safe")));
  }

  private boolean glazed() {
    return with.digester() != null
        && plan.cover() != null
        && (plan.cover().kind() == null || plan.cover().kind() == CoverKind.GLAZED);
  }

  private double glassM2() {
    return with.digester().glassM2();
  }

  private Verdict glass() {
    if (!glazed()) {
      return null;
    }
    DigesterEstimate glass = with.digester().estimate();
    DigesterEstimate earth = without(PlanWithout.glass(plan), Stage.DIGESTER).digester().estimate();
    double gain = usefulKWh(glass) - usefulKWh(earth);
    double perM2 = gain / glassM2();
    List<Reason> reasons = new ArrayList<>();
    if (plan.gas() == null) {
      reasons.add(Reason.of("decision.glass-needs-gas"));
    }
    reasons.add(Reason.of("decision.glass-useful", "gainKWh", gain, "perM2", perM2));
    reasons.add(
        Reason.of(
            "decision.glass-warms",
            "withoutC",
            earth.annual().meanLiquorTemperatureC(),
            "withC",
            glass.annual().meanLiquorTemperatureC()));
    reasons.add(
        Reason.of(
            "decision.glass-as-heater", "heaterKWh", thresholds.waterHeaterYield() * glassM2()));
    return new Verdict(
        Component.GLASS,
        worth(perM2, thresholds.glassYes(), thresholds.glassMarginal()),
        List.copyOf(reasons),
        List.of());
  }

  private Verdict nightInsulation() {
    if (!glazed()
        || plan.cover().nightResistanceM2KW() == null
        || plan.cover().nightResistanceM2KW() <= 0) {
      return null;
    }
    DigesterEstimate bare =
        without(PlanWithout.nightInsulation(plan), Stage.DIGESTER).digester().estimate();
    double gain = usefulKWh(with.digester().estimate()) - usefulKWh(bare);
    double perM2 = gain / glassM2();
    return new Verdict(
        Component.NIGHT_INSULATION,
        worth(perM2, thresholds.glassYes() / 2, thresholds.glassMarginal() / 2),
        List.of(Reason.of("decision.quilt-useful", "gainKWh", gain, "perM2", perM2)),
        List.of());
  }

  private Verdict beds() {
    if (with.wetland() == null || with.digester() == null) {
      return null;
    }
    WaterStream in = with.digester().effluent();
    WaterStream out = with.wetland().outflow();
    WaterStream bare = without(PlanWithout.beds(plan), Stage.LOOP).digester().effluent();
    double bodRemoved = removed(Months.sum(in.bod5Kg()), Months.sum(out.bod5Kg()));
    List<Reason> reasons = new ArrayList<>();
    int unfit = months(UseAnswer.UNFIT);
    if (unfit > 0) {
      reasons.add(Reason.of("decision.beds-unfit", "months", unfit));
    }
    long overloaded =
        with.wetland().estimate().beds().stream()
            .filter(bed -> bed.loading().answer() == Adequacy.INSUFFICIENT)
            .count();
    if (overloaded > 0) {
      reasons.add(Reason.of("decision.beds-overloaded", "beds", overloaded));
    }
    reasons.add(
        Reason.of(
            "decision.beds-remove",
            "bodPercent",
            100 * bodRemoved,
            "nitrogenPercent",
            100 * removed(in.annual().nitrogenKg(), out.annual().nitrogenKg())));
    reasons.add(
        Reason.of(
            "decision.beds-without",
            "withoutBodKg",
            Months.sum(bare.bod5Kg()),
            "withoutNitrogenKg",
            bare.annual().nitrogenKg(),
            "withBodKg",
            Months.sum(out.bod5Kg()),
            "withNitrogenKg",
            out.annual().nitrogenKg()));
    int dry = with.wetland().estimate().withoutOutflow().size();
    if (dry > 0) {
      reasons.add(Reason.of("decision.beds-no-outflow", "months", dry));
    }
    Worth removal = worth(bodRemoved, thresholds.bedRemovalYes(), thresholds.bedRemovalMarginal());
    boolean fails = unfit > 0 || overloaded > 0;
    return new Verdict(
        Component.BEDS,
        fails && removal == Worth.YES ? Worth.MARGINAL : removal,
        List.copyOf(reasons),
        List.of(Reason.of("decision.water-not-for-raw-food")));
  }

  private static double removed(double in, double out) {
    return in > 0 ? 1 - out / in : 0;
  }

  private int months(UseAnswer answer) {
    return Collections.frequency(with.wetland().estimate().fitness().monthly(), answer);
  }

  private Verdict fuelAlcohol() {
    if (with.ethanol() == null) {
      return null;
    }
    EthanolEstimate ethanol = with.ethanol().estimate();
    List<Reason> permit = List.of(Reason.of("decision.permit-for-distilling"));
    if (ethanol.annual().ethanolL() <= 0) {
      return new Verdict(
          Component.FUEL_ALCOHOL, Worth.NO, List.of(Reason.of("decision.fuel-none")), permit);
    }
    double fuel = ethanol.annual().fuelEnergyKWh();
    double net = ethanol.annual().netEnergyKWh();
    double spent = fuel - net;
    Worth worth =
        net <= 0
            ? Worth.NO
            : fuel >= thresholds.fuelRatioYes() * spent ? Worth.YES : Worth.MARGINAL;
    Double beer = ethanol.mash().beerStrengthPercentVol();
    return new Verdict(
        Component.FUEL_ALCOHOL,
        worth,
        List.of(
            Reason.of(
                "decision.fuel-net", "fuelEnergyKWh", fuel, "spentKWh", spent, "netEnergyKWh", net),
            Reason.of(
                "decision.fuel-litres",
                "ethanolL",
                ethanol.annual().ethanolL(),
                "beerPercent",
                beer == null ? 0 : beer)),
        permit);
  }

  private Verdict compost() {
    if (with.compost() == null) {
      return null;
    }
    CompostEstimate.Annual annual = with.compost().estimate().annual();
    Double returned = returnedPhosphorus(with);
    double raw = landPhosphorusKg(without(PlanWithout.compost(plan), Stage.LOOP));
    double share = returned == null ? 0 : returned;
    return new Verdict(
        Component.COMPOST,
        worth(share, thresholds.compostReturnedYes(), thresholds.compostReturnedMarginal()),
        List.of(
            Reason.of(
                "decision.compost-returns",
                "phosphorusKg",
                annual.phosphorusKg(),
                "nitrogenKg",
                annual.nitrogenKg(),
                "potassiumKg",
                annual.potassiumKg(),
                "returnedPercent",
                100 * share),
            Reason.of("decision.compost-without", "withoutKg", raw)),
        List.of(Reason.of("decision.hygiene-not-shown")));
  }

  private static Double returnedPhosphorus(LoopRun run) {
    for (Closure closure : run.closure()) {
      if (closure.quantity().equals(Conserved.PHOSPHORUS.wireName())) {
        return closure.returnedFraction();
      }
    }
    throw new IllegalStateException("no closure of phosphorus");
  }

  private static double landPhosphorusKg(LoopRun run) {
    double sum = 0;
    for (Flow flow : run.flows()) {
      if (flow.quantity().equals(Conserved.PHOSPHORUS.wireName()) && flow.to().equals(Party.LAND)) {
        sum += flow.perYear();
      }
    }
    return sum;
  }
}
