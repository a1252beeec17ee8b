package org.marshlight.loop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Assumption;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.digester.TankYears;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;

/** Runs a plan's stages in the order of the flow, again and again where a stream returns. */
public final class LoopModel {

  /** A returned stream stands still when it moves by less than this share of itself. */
  private static final double STILL = 1e-11;

  private static final int MOST_PASSES = 200;

  private LoopModel() {}

  /** The coefficients of a plan: the central ones with its overrides. */
  public static CoefficientSet coefficients(Plan plan) {
    CoefficientSet central = CoefficientBook.standard().central();
    return plan.coefficients() == null ? central : central.with(plan.coefficients());
  }

  /**
   * Runs a legal plan as far as a stage needs.
   *
   * @param plan the plan
   * @param stage the stage asked for
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   * @throws Faults if a returned stream does not settle
   */
  public static LoopRun run(Plan plan, Stage stage, PreparedSite site, CoefficientSet set) {
    return run(plan, stage, site, set, new TankYears());
  }

  /**
   * Runs a legal plan as far as a stage needs, sharing the years of tanks with other runs.
   *
   * @param plan the plan
   * @param stage the stage asked for
   * @param site its site, prepared with the same coefficients
   * @param set coefficients of the run
   * @param tanks years of tanks that were run already
   * @throws Faults if a returned stream does not settle
   */
  public static LoopRun run(
      Plan plan, Stage stage, PreparedSite site, CoefficientSet set, TankYears tanks) {
    Defaults defaults = new Defaults(set);
    ResolvedPlan resolved = ResolvedPlan.of(plan, defaults);
    StagesToRun stages = StagesToRun.of(resolved, stage);
    Chain chain = new Chain(resolved, stages, site.year(), set, tanks);
    Returned returned = Returned.NOTHING;
    for (int pass = 1; pass <= MOST_PASSES; pass++) {
      ChainRun run = chain.pass(returned);
      List<Returned.Stream> moved = run.returned().movedSince(returned, STILL);
      if (moved.isEmpty()) {
        return finished(run, resolved, stages, site, set, pass);
      }
      returned = run.returned();
      if (pass == MOST_PASSES) {
        throw new Faults(moved.stream().map(LoopModel::unsettled).toList());
      }
    }
    throw new IllegalStateException("unreachable: the last pass returns or throws");
  }

  private static Fault unsettled(Returned.Stream stream) {
    return Fault.of(
        "loop.not-settled",
        "/routes/" + stream.route(),
        "tank",
        "another receiver, or a smaller stream",
        "stream",
        stream.name(),
        "passes",
        MOST_PASSES);
  }

  private static LoopRun finished(
      ChainRun run,
      ResolvedPlan resolved,
      StagesToRun stages,
      PreparedSite site,
      CoefficientSet set,
      int passes) {
    List<Assumption> assumptions = new ArrayList<>(site.assumptions());
    for (Assumption assumption : resolved.assumptions()) {
      if (!assumptions.contains(assumption)) {
        assumptions.add(assumption);
      }
    }
    List<Notice> notices = new ArrayList<>(site.notices());
    notices.addAll(run.notices());
    return new LoopRun(
        site.year(),
        run.digester(),
        run.wetland(),
        run.crop(),
        run.ethanol(),
        resolved.still(),
        run.compost(),
        run.soakedGreywater(),
        resolved.given().effluent() == null
            ? null
            : GivenStreams.effluent(resolved.given().effluent(), set),
        run.otherAccounts(),
        List.copyOf(assumptions),
        () -> CoefficientsRead.of(resolved, stages, set),
        List.copyOf(notices),
        passes,
        run.working());
  }
}
