package org.marshlight.decision;

import java.util.Collections;
import java.util.List;
import org.marshlight.contract.Months;
import org.marshlight.feed.Account;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Party;
import org.marshlight.feed.WaterStream;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.WetlandEstimate.UseAnswer;

/**
 * What a plan comes to in the terms in which parts are compared with each other, with what its
 * wastes do that it takes up nowhere.
 *
 * @param run the chain
 * @param service what its gas does
 * @param outflowBod5Kg oxygen demand that leaves for use, soil or water
 * @param outflow nutrients that leave with it
 * @param unfitMonths months in which the outflow breaks a limit of its use; null without beds
 * @param land nutrients that come back to land
 * @param gases greenhouse gases, less what is spared elsewhere
 */
record Effects(
    LoopRun run,
    GasService service,
    double outflowBod5Kg,
    Nutrients outflow,
    Integer unfitMonths,
    Nutrients land,
    GreenhouseGasEstimate.Weight gases) {

  /**
   * The effects of a run. Wastes that the changed plan takes up less of go their way without the
   * plan.
   *
   * @param basis the plan that is judged
   * @param changed the plan that was run: it, or what differs from it
   * @param run the chain of the plan that was run
   */
  static Effects of(Comparisons basis, Plan changed, LoopRun run) {
    return of(
        basis,
        changed,
        run,
        WasteElsewhere.between(basis.plan(), changed, basis.baseline(), basis.set()));
  }

  /**
   * The effects of a run.
   *
   * @param basis the plan that is judged
   * @param changed the plan that was run
   * @param run the chain of the plan that was run
   * @param elsewhere wastes of the plan that the changed plan takes up nowhere
   */
  static Effects of(Comparisons basis, Plan changed, LoopRun run, List<WasteElsewhere> elsewhere) {
    GasService service =
        run.digester() == null || changed.gas() == null
            ? GasService.NONE
            : GasService.of(
                run.digester().estimate(),
                basis.set().bind(UseEfficiencies.class),
                basis.displaced());
    FeedFates otherwise = new FeedFates(elsewhere, basis.baseline(), basis.set());
    return new Effects(
        run,
        service,
        bod5Kg(run),
        outflow(run),
        run.wetland() == null
            ? null
            : Collections.frequency(run.wetland().estimate().fitness().monthly(), UseAnswer.UNFIT),
        given(run, Party.LAND).plus(otherwise.toLand()),
        weight(basis, run, service, otherwise));
  }

  private static GreenhouseGasEstimate.Weight weight(
      Comparisons basis, LoopRun run, GasService service, FeedFates otherwise) {
    WarmingCoefficients c = basis.set().bind(WarmingCoefficients.class);
    GreenhouseGasEstimate.Weight sum = GreenhouseGasEstimate.Weight.NONE;
    for (Gases gases : GasesOfRun.givenOff(run, basis.set())) {
      sum = sum.plus(gases.weight(c));
    }
    for (Gases gases : otherwise.gases()) {
      sum = sum.plus(gases.weight(c));
    }
    for (Gases gases :
        GasesOfRun.spared(run, service, basis.money().displacedFuel(), basis.set())) {
      sum = sum.minus(gases.weight(c));
    }
    return sum;
  }

  private static double bod5Kg(LoopRun run) {
    double soaked = bod5Kg(run.soakedGreywater());
    if (run.wetland() != null) {
      return soaked + bod5Kg(run.wetland().outflow()) + bod5Kg(run.wetland().diverted());
    }
    return soaked
        + bod5Kg(run.digester() == null ? run.givenEffluent() : run.digester().effluent());
  }

  /** Nutrients that leave with the water; given water that meets no bed leaves as it is given. */
  private static Nutrients outflow(LoopRun run) {
    Nutrients leaving = given(run, Party.SOIL, Party.WATER_USE);
    return run.wetland() == null && run.digester() == null && run.givenEffluent() != null
        ? leaving.plus(Nutrients.of(run.givenEffluent().annual()))
        : leaving;
  }

  private static double bod5Kg(WaterStream stream) {
    return stream == null ? 0 : Months.sum(stream.bod5Kg());
  }

  private static Nutrients given(LoopRun run, String... parties) {
    List<String> receivers = List.of(parties);
    Matter sum = Matter.NONE;
    for (Account account : run.accounts()) {
      for (Account.Entry entry : account.gave()) {
        if (receivers.contains(entry.party())) {
          sum = sum.plus(entry.matter());
        }
      }
    }
    return Nutrients.of(sum);
  }
}
