package org.marshlight.decision;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Params;
import org.marshlight.contract.Sentences;
import org.marshlight.decision.GreenhouseGasEstimate.Line;
import org.marshlight.decision.GreenhouseGasEstimate.Side;
import org.marshlight.decision.GreenhouseGasEstimate.Weight;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.digester.MethaneKinetics;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.feed.Stoichiometry;
import org.marshlight.loop.Plan;

/** The household with its present system against the plan, in greenhouse gases. */
final class GreenhouseGasModel {

  private final Comparisons basis;
  private final Effects with;
  private final WarmingCoefficients c;

  private GreenhouseGasModel(Comparisons basis, Effects with) {
    this.basis = basis;
    this.with = with;
    this.c = basis.set().bind(WarmingCoefficients.class);
  }

  /** The comparison; null where the plan has no tank. */
  static GreenhouseGasEstimate of(Comparisons basis, Effects with) {
    return with.run().digester() == null ? null : new GreenhouseGasModel(basis, with).estimate();
  }

  private GreenhouseGasEstimate estimate() {
    List<Gases> present = present();
    List<Gases> plan = GasesOfRun.givenOff(with.run(), basis.set());
    List<Line> lines = new ArrayList<>();
    present.forEach(gases -> lines.add(line(Side.PRESENT, gases)));
    plan.forEach(gases -> lines.add(line(Side.PLAN, gases)));
    Weight before = sum(present);
    Weight after = sum(plan);
    DigesterEstimate.Annual tank = with.run().digester().estimate().annual();
    double gasPhase = tank.methaneProducedNm3() - tank.methaneDissolvedNm3();
    double leak = gasPhase > 0 ? tank.methaneLeakedNm3() / gasPhase : 0;
    Weight net = after.minus(before);
    Weight delivered = sum(GasesOfRun.ofDelivered(with.run(), basis.set())).minus(sparedByGas());
    double gasKg = GasesOfRun.methaneKg(gasPhase);
    return new GreenhouseGasEstimate(
        basis.baseline().sewage(),
        basis.money().displacedFuel(),
        List.copyOf(lines),
        before,
        after,
        net,
        leak,
        breakEven(net.over100YearsKg(), delivered.over100YearsKg(), gasKg * c.methane100(), leak),
        breakEven(net.over20YearsKg(), delivered.over20YearsKg(), gasKg * c.methane20(), leak),
        Warming.breakEvenLeak(sparedPerMethane(), c.methane100()),
        Warming.breakEvenLeak(sparedPerMethane(), c.methane20()));
  }

  /** What the household gives off now, fuel that the plan would spare included. */
  private List<Gases> present() {
    List<Gases> present = new ArrayList<>();
    if (basis.baseline().sewage() == BaselineDesign.Sewage.PRESENT_TANK) {
      Plan tank = PlanWithout.everything(basis.plan());
      present.addAll(GasesOfRun.givenOff(basis.tank(tank), basis.set()));
    }
    List<WasteElsewhere> wastes = new ArrayList<>(WasteElsewhere.fed(basis.plan(), basis.set()));
    wastes.addAll(WasteElsewhere.composted(basis.plan(), basis.baseline(), basis.set()));
    present.addAll(new FeedFates(wastes, basis.baseline(), basis.set()).gases());
    present.addAll(
        GasesOfRun.spared(with.run(), with.service(), basis.money().displacedFuel(), basis.set()));
    return present;
  }

  private Weight sparedByGas() {
    return sum(
        GasesOfRun.spared(with.run(), with.service(), basis.money().displacedFuel(), basis.set())
            .stream()
            .filter(
                gases ->
                    gases.code().equals(GasesOfRun.SPARED_FUEL)
                        || gases.code().equals(GasesOfRun.SPARED_ELECTRICITY))
            .toList());
  }

  /** Carbon dioxide of the displaced fuel for each kg of methane burned for cooking. */
  private double sparedPerMethane() {
    double methaneMJKg =
        MethaneKinetics.methaneEnergyKWh(1)
            * 3.6
            * Stoichiometry.MOLAR_VOLUME_M3_KMOL
            / Stoichiometry.METHANE;
    return Warming.sparedPerMethane(
        methaneMJKg,
        basis.set().bind(UseEfficiencies.class).cooking(),
        basis.displaced().stoveEfficiency(),
        basis.displaced().carbonDioxideKgKWh() * 1000 / 3.6);
  }

  /**
   * The leak at which nothing is gained: what leaks weighs as methane, what does not is burned,
   * flared or vented in the plan's proportions.
   */
  private static Double breakEven(double net, double delivered, double gasWeight, double leak) {
    if (gasWeight <= 0 || leak >= 1) {
      return null;
    }
    double wholeDelivered = delivered / (1 - leak);
    double slope = gasWeight - wholeDelivered;
    if (slope <= 0) {
      return null;
    }
    double share = leak - net / slope;
    return share >= 0 && share <= 1 ? share : null;
  }

  private Line line(Side side, Gases gases) {
    return new Line(
        side,
        gases.code(),
        Sentences.text(gases.code(), Params.of()),
        gases.carbonDioxideKg(),
        gases.methaneKg(),
        gases.nitrousOxideKg(),
        gases.weight(c));
  }

  private Weight sum(List<Gases> lines) {
    Weight sum = Weight.NONE;
    for (Gases gases : lines) {
      sum = sum.plus(gases.weight(c));
    }
    return sum;
  }
}
