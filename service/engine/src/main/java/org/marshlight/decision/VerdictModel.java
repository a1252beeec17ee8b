package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Notice;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.CoefficientsRead;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/** Runs a plan with and without each of its parts and says which are worth building. */
public final class VerdictModel {

  private final Comparisons basis;
  private final Effects with;
  private final Sizes sizes;
  private final WorkEstimate work;
  private final EnergyParts energy;
  private final WaterParts water;
  private final ReturnParts returns;

  private VerdictModel(Plan plan, LoopRun run, Comparisons basis) {
    this.basis = basis;
    basis.know(plan, run);
    with = basis.effects(plan);
    sizes = Sizes.of(plan, run.year().site().latitudeRad(), basis.set());
    double alcohol = run.ethanol() == null ? 0 : run.ethanol().estimate().annual().netEnergyKWh();
    work =
        WorkModel.of(
            plan,
            run,
            sizes,
            with.service().annualUsefulKWh() + alcohol,
            basis.money().hourValue(),
            basis.set().bind(WorkCoefficients.class));
    energy = new EnergyParts(basis, with, sizes, work);
    water = new WaterParts(basis, with, work);
    returns = new ReturnParts(basis, with, work);
  }

  /**
   * Everything that is decided of a plan.
   *
   * @param plan the plan
   * @param with its whole chain as run
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   * @param tanks years of tanks that were run already
   */
  public static Decision decide(
      Plan plan, LoopRun with, PreparedSite site, CoefficientSet set, TankYears tanks) {
    return new VerdictModel(plan, with, new Comparisons(plan, site, set, tanks, Stage.LOOP))
        .decision();
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
    return verdicts(plan, with, site, set, new TankYears());
  }

  /** The verdicts of a plan that shares years of tanks with other runs. */
  public static List<Verdict> verdicts(
      Plan plan, LoopRun with, PreparedSite site, CoefficientSet set, TankYears tanks) {
    return new VerdictModel(plan, with, new Comparisons(plan, site, set, tanks, Stage.LOOP))
        .verdicts();
  }

  /** The verdict of one part of a legal plan; null where the plan does not have it. */
  static Verdict verdict(Comparisons basis, Component component, String bed) {
    Plan plan = basis.plan();
    return new VerdictModel(plan, basis.run(plan), basis).verdict(component, bed);
  }

  private Verdict verdict(Component component, String bed) {
    return switch (component) {
      case GAS_CAPTURE -> energy.gasCapture();
      case GLASS -> energy.glass();
      case NIGHT_INSULATION -> energy.nightInsulation();
      case CO_FEEDING -> energy.coFeeding();
      case BEDS -> water.all();
      case BED ->
          water.each().stream()
              .filter(verdict -> verdict.bed().equals(bed))
              .findFirst()
              .orElse(null);
      case FUEL_ALCOHOL -> returns.fuelAlcohol();
      case COMPOST -> returns.compost();
    };
  }

  private List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    verdicts.add(energy.gasCapture());
    verdicts.add(energy.glass());
    verdicts.add(energy.nightInsulation());
    verdicts.add(energy.coFeeding());
    verdicts.add(water.all());
    verdicts.addAll(water.each());
    verdicts.add(returns.fuelAlcohol());
    verdicts.add(returns.compost());
    return verdicts.stream().filter(Objects::nonNull).toList();
  }

  private Decision decision() {
    List<Verdict> verdicts = verdicts();
    List<MaterialNeeded> materials =
        Materials.of(
                sizes, with.run().ethanol() != null, basis.set().bind(BuildingCoefficients.class))
            .stream()
            .filter(material -> !basis.money().owns(material.part()))
            .toList();
    List<Assumption> assumptions = new ArrayList<>(basis.assumptions());
    assumptions.addAll(CoefficientsRead.of(List.of("economy", "decision"), basis.set()));
    return new Decision(
        verdicts,
        WholeMoney.of(basis, with, work),
        GreenhouseGasModel.of(basis, with),
        EnergyReturnEstimate.of(with, materials, basis.money().lifeYears()),
        Alternatives.of(basis, with, sizes),
        materials,
        work,
        YearlyCalendar.of(basis.plan(), with.run(), sizes),
        List.copyOf(assumptions),
        notices(verdicts, materials));
  }

  private List<Notice> notices(List<Verdict> verdicts, List<MaterialNeeded> materials) {
    List<Notice> notices = new ArrayList<>();
    if (verdicts.isEmpty()) {
      notices.add(Notice.of("decision.nothing-judged"));
    }
    if (basis.money().capital() == null || basis.money().fuelPricePerKWh() == null) {
      notices.add(Notice.of("decision.no-costs"));
    }
    if (basis.money().capital() != null) {
      notices.add(Notice.of("decision.costs-as-given"));
    }
    if (basis.money().capital() != null
        && basis.money().electricityPrice() == null
        && with.service().annualDisplacedElectricityKWh() > 0) {
      notices.add(
          Notice.of(
              "decision.no-electricity-price",
              "electricityKWh",
              with.service().annualDisplacedElectricityKWh()));
    }
    IrrigatedNutrients irrigated = IrrigatedNutrients.of(with.run(), basis.set());
    if (irrigated.matter()) {
      notices.add(irrigated.notice());
    }
    if (!materials.isEmpty()) {
      notices.add(Notice.of("decision.no-structural-design"));
    }
    return List.copyOf(notices);
  }
}
