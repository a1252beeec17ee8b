package org.marshlight.decision;

import static org.marshlight.contract.RecordShape.changed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.marshlight.contract.WireName;
import org.marshlight.decision.BuildOrderStudy.LeftOut;
import org.marshlight.decision.BuildOrderStudy.Phase;
import org.marshlight.decision.BuildOrderStudy.Reading;
import org.marshlight.decision.BuildOrderStudy.Step;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.digester.TankYears;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.economy.PlanPart;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/**
 * Finds an order in which to build: the tank, then what earns most for each unit of money spent
 * with what stands before it, prerequisites and budget kept; then what serves water and land. Each
 * gain is that of the engine on the plan of the parts that stand.
 */
public final class BuildOrderModel {

  /** Runs of the chain that the order takes at the most, readings left out: one for each set. */
  public static final int MOST_RUNS = 1 << Step.values().length;

  private static final Map<Step, Set<Step>> NEEDS =
      Map.of(
          Step.TANK, EnumSet.noneOf(Step.class),
          Step.GAS_CAPTURE, EnumSet.of(Step.TANK),
          Step.GLASS, EnumSet.of(Step.TANK, Step.GAS_CAPTURE),
          Step.NIGHT_INSULATION, EnumSet.of(Step.TANK, Step.GAS_CAPTURE, Step.GLASS),
          Step.CO_FEEDING, EnumSet.of(Step.TANK, Step.GAS_CAPTURE),
          Step.BEDS, EnumSet.of(Step.TANK),
          Step.FUEL_ALCOHOL, EnumSet.of(Step.TANK, Step.BEDS),
          Step.COMPOST, EnumSet.noneOf(Step.class));

  private final Plan plan;
  private final Comparisons basis;
  private final MoneyDesign money;
  private final List<Verdict> verdicts;
  private final Set<Step> wanted = EnumSet.noneOf(Step.class);
  private final Set<Step> standing = EnumSet.noneOf(Step.class);
  private final List<Phase> phases = new ArrayList<>();
  private final Map<Plan, LoopRun> built = new LinkedHashMap<>();
  private double spent;

  private BuildOrderModel(Plan plan) {
    this.plan = plan;
    CoefficientSet set = LoopModel.coefficients(plan);
    PreparedSite site = PreparedSite.of(plan, set);
    TankYears tanks = new TankYears();
    basis = new Comparisons(plan, site, set, tanks, Stage.LOOP);
    money = basis.money();
    verdicts = VerdictModel.verdicts(plan, basis.run(plan), site, set, tanks);
  }

  /** A model of a legal plan. */
  public static BuildOrderModel of(Plan plan) {
    return new BuildOrderModel(plan);
  }

  /** The readings that could change a verdict of the plan. */
  public ReadingTrials trials() {
    return new ReadingTrials(plan, basis, verdicts);
  }

  /**
   * The order, found once.
   *
   * @param readings what to read first
   */
  public BuildOrderStudy study(List<Reading> readings) {
    gather();
    if (wanted.contains(Step.TANK)) {
      build(Step.TANK, Reason.of("decision.order-foundation", "cost", cost(Step.TANK)));
    }
    earning();
    serving();
    return new BuildOrderStudy(
        money.currency(), money.budget(), spent, readings, List.copyOf(phases), leftOut());
  }

  /** The plan that stands after each phase of the order, with its run; none before the study. */
  public Map<Plan, LoopRun> built() {
    return Collections.unmodifiableMap(built);
  }

  private void gather() {
    Sizes sizes = Sizes.of(plan, basis.site().year().site().latitudeRad(), basis.set());
    want(Step.TANK, sizes.tank() != null, PlanPart.TANK);
    want(Step.GAS_CAPTURE, sizes.gas() != null && sizes.tank() != null, PlanPart.GAS);
    want(Step.GLASS, sizes.glazed(), PlanPart.COVER);
    want(Step.NIGHT_INSULATION, sizes.quilted(), PlanPart.COVER);
    want(Step.CO_FEEDING, judged(Component.CO_FEEDING).isPresent(), null);
    want(Step.BEDS, !sizes.beds().isEmpty(), PlanPart.BEDS);
    want(Step.FUEL_ALCOHOL, plan.fuel() != null, PlanPart.FUEL);
    want(Step.COMPOST, plan.compost() != null, PlanPart.COMPOST);
  }

  private void want(Step step, boolean there, PlanPart part) {
    if (there) {
      (part != null && money.owns(part) ? standing : wanted).add(step);
    }
  }

  private Optional<Verdict> judged(Component component) {
    return verdicts.stream().filter(v -> v.component() == component).findFirst();
  }

  private static Component component(Step step) {
    return Component.valueOf(step.name());
  }

  private double cost(Step step) {
    double quilt = basis.set().bind(DecisionCoefficients.class).quiltCostShare();
    boolean quilted =
        wanted.contains(Step.NIGHT_INSULATION) || standing.contains(Step.NIGHT_INSULATION);
    return switch (step) {
      case TANK -> PartMoney.orNought(money.toPay(PlanPart.TANK));
      case GAS_CAPTURE -> PartMoney.orNought(money.toPay(PlanPart.GAS));
      case GLASS -> PartMoney.orNought(money.toPay(PlanPart.COVER)) * (quilted ? 1 - quilt : 1);
      case NIGHT_INSULATION -> PartMoney.orNought(money.toPay(PlanPart.COVER)) * quilt;
      case CO_FEEDING -> 0;
      case BEDS -> PartMoney.orNought(money.toPay(PlanPart.BEDS));
      case FUEL_ALCOHOL -> PartMoney.orNought(money.toPay(PlanPart.FUEL));
      case COMPOST -> PartMoney.orNought(money.toPay(PlanPart.COMPOST));
    };
  }

  /** The plan of some parts alone; what they need and is not among them keeps them idle. */
  private Plan of(Set<Step> chosen) {
    Set<Step> parts = EnumSet.noneOf(Step.class);
    for (Step step : Step.values()) {
      if (chosen.contains(step) && chosen.containsAll(NEEDS.get(step))) {
        parts.add(step);
      }
    }
    Plan built = plan;
    built = parts.contains(Step.GAS_CAPTURE) ? built : PlanWithout.gas(built);
    if (!parts.contains(Step.GLASS) && wantedOrStanding(Step.GLASS)) {
      built = PlanWithout.glass(built);
    } else if (!parts.contains(Step.NIGHT_INSULATION) && wantedOrStanding(Step.NIGHT_INSULATION)) {
      built = PlanWithout.nightInsulation(built);
    }
    built = parts.contains(Step.CO_FEEDING) ? built : PlanWithout.feeds(built);
    built = parts.contains(Step.BEDS) ? built : PlanWithout.beds(built);
    built = parts.contains(Step.FUEL_ALCOHOL) ? built : PlanWithout.fuel(built);
    built = parts.contains(Step.COMPOST) ? built : PlanWithout.compost(built);
    return parts.contains(Step.TANK) ? built : changed(built, "tank", null);
  }

  private boolean wantedOrStanding(Step step) {
    return wanted.contains(step)
        || standing.contains(step)
        || phases.stream().anyMatch(phase -> phase.step() == step);
  }

  private Set<Step> with(Set<Step> more) {
    Set<Step> parts = EnumSet.copyOf(standing);
    parts.addAll(more);
    return parts;
  }

  /** Builds what earns, the most for each unit of money first. */
  private void earning() {
    while (true) {
      Optional<Bundle> best =
          wanted.stream()
              .filter(step -> step != Step.BEDS && step != Step.COMPOST)
              .map(this::bundle)
              .filter(bundle -> bundle.worth() > 0 && affordable(bundle.cost()))
              .max(Comparator.comparingDouble(Bundle::worthOfCost));
      if (best.isEmpty()) {
        return;
      }
      for (Step step : best.get().steps()) {
        buildEarning(step);
      }
    }
  }

  /** A part with what it needs that does not stand yet. */
  private Bundle bundle(Step step) {
    EnumSet<Step> steps = EnumSet.of(step);
    steps.addAll(NEEDS.get(step));
    steps.removeAll(standing);
    double cost = steps.stream().mapToDouble(this::cost).sum();
    Effects before = basis.effects(of(standing));
    Effects after = basis.effects(of(with(steps)));
    return new Bundle(List.copyOf(steps), cost, worth(steps, before, after));
  }

  /** Parts that are built together; worth is money, or useful energy where money is not known. */
  private record Bundle(List<Step> steps, double cost, double worth) {

    double worthOfCost() {
      return worth / Math.max(1, cost);
    }
  }

  private double worth(Set<Step> steps, Effects before, Effects after) {
    if (!steps.stream().allMatch(step -> money(step, before, after).isPresent())) {
      double alcohol =
          steps.contains(Step.FUEL_ALCOHOL) ? alcoholNet(after) - alcoholNet(before) : 0;
      return after.service().annualUsefulKWh() - before.service().annualUsefulKWh() + alcohol;
    }
    double worth = 0;
    Set<Step> parts = EnumSet.copyOf(standing);
    for (Step step : steps) {
      Effects without = basis.effects(of(parts));
      parts.add(step);
      worth += money(step, without, basis.effects(of(parts))).orElseThrow();
    }
    return worth;
  }

  private static double alcoholNet(Effects effects) {
    return effects.run().ethanol() == null
        ? 0
        : effects.run().ethanol().estimate().annual().netEnergyKWh();
  }

  /** Expected net present value of a part between two states; empty where it is not known. */
  private Optional<Double> money(Step step, Effects without, Effects with) {
    PartMoney parts = new PartMoney(basis, workOf(with));
    double quilt = basis.set().bind(DecisionCoefficients.class).quiltCostShare();
    var appraisal =
        switch (step) {
          case GAS_CAPTURE -> parts.energy(Component.GAS_CAPTURE, PlanPart.GAS, 1, with, without);
          case GLASS ->
              parts.energy(
                  Component.GLASS,
                  PlanPart.COVER,
                  wantedOrStanding(Step.NIGHT_INSULATION) ? 1 - quilt : 1,
                  with,
                  without);
          case NIGHT_INSULATION ->
              parts.energy(Component.NIGHT_INSULATION, PlanPart.COVER, quilt, with, without);
          case CO_FEEDING -> parts.coFeeding(with, without);
          case BEDS -> with.run().wetland() == null ? null : parts.beds(1, with.run());
          case FUEL_ALCOHOL -> with.run().ethanol() == null ? null : parts.alcohol(with.run());
          case COMPOST -> with.run().compost() == null ? null : parts.compost(with.run());
          case TANK -> null;
        };
    return Optional.ofNullable(appraisal).map(a -> a.expectedNetPresentValue());
  }

  private WorkEstimate workOf(Effects effects) {
    return WorkModel.of(
        plan,
        effects.run(),
        Sizes.of(plan, effects.run().year().site().latitudeRad(), basis.set()),
        0,
        money.hourValue(),
        basis.set().bind(WorkCoefficients.class));
  }

  private boolean affordable(double cost) {
    return money.budget() == null || spent + cost <= money.budget();
  }

  private void buildEarning(Step step) {
    Effects before = basis.effects(of(standing));
    Effects after = basis.effects(of(with(EnumSet.of(step))));
    Optional<Double> worth = money(step, before, after);
    build(
        step,
        worth.isPresent()
            ? Reason.of("decision.order-pays", "expected", worth.get(), "cost", cost(step))
            : Reason.of(
                "decision.order-gives",
                "usefulKWh",
                after.service().annualUsefulKWh() - before.service().annualUsefulKWh(),
                "cost",
                cost(step)));
  }

  /** Builds what serves water, then land, unless its verdict is no. */
  private void serving() {
    List<Step> serving =
        wanted.stream()
            .filter(step -> step == Step.BEDS || step == Step.COMPOST)
            .filter(step -> standing.containsAll(NEEDS.get(step)))
            .filter(step -> answer(step) != Worth.NO)
            .toList();
    for (Step step : serving) {
      if (affordable(cost(step))) {
        build(
            step,
            Reason.of(
                "decision.order-serves", "answer", WireName.of(answer(step)), "cost", cost(step)));
        earning();
      }
    }
  }

  private Worth answer(Step step) {
    return judged(component(step)).map(Verdict::answer).orElse(Worth.NO);
  }

  private void build(Step step, Reason reason) {
    Effects before = basis.effects(of(standing));
    Plan grown = of(with(EnumSet.of(step)));
    Effects after = basis.effects(grown);
    built.put(grown, after.run());
    spent += cost(step);
    phases.add(
        new Phase(
            phases.size() + 1,
            step,
            List.copyOf(NEEDS.get(step)),
            cost(step),
            spent,
            after.service().annualUsefulKWh() - before.service().annualUsefulKWh(),
            money(step, before, after).orElse(null),
            after.gases().minus(before.gases()),
            reason));
    standing.add(step);
    wanted.remove(step);
  }

  private List<LeftOut> leftOut() {
    List<LeftOut> left = new ArrayList<>();
    for (Step step : wanted) {
      if (!standing.contains(step)) {
        left.add(new LeftOut(step, whyNot(step)));
      }
    }
    return List.copyOf(left);
  }

  private Reason whyNot(Step step) {
    for (Step need : NEEDS.get(step)) {
      if (!standing.contains(need)) {
        return Reason.of("decision.order-needs", "needs", WireName.of(need));
      }
    }
    if (!affordable(cost(step))) {
      return Reason.of(
          "decision.order-over-budget", "cost", cost(step), "left", money.budget() - spent);
    }
    Effects before = basis.effects(of(standing));
    Optional<Double> worth = money(step, before, basis.effects(of(with(EnumSet.of(step)))));
    return worth.isPresent() && step != Step.BEDS && step != Step.COMPOST
        ? Reason.of("decision.order-loses", "expected", worth.get())
        : Reason.of("decision.order-not-worth", "answer", WireName.of(answer(step)));
  }
}
