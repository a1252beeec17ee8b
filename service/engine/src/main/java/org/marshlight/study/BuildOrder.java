package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.decision.BuildOrderModel;
import org.marshlight.decision.BuildOrderStudy;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.ReadingTrials;
import org.marshlight.loop.Plan;

/** Finds an order in which to build, and the readings that could change it. */
final class BuildOrder implements PreparedStudy<BuildOrderStudy> {

  private final BuildOrderModel model;
  private final ReadingTrials trials;

  BuildOrder(Plan plan) {
    model = BuildOrderModel.of(plan);
    trials = model.trials();
  }

  @Override
  public String costliestField() {
    return "/plan";
  }

  @Override
  public StudyCost cost() {
    return StudyCost.of(
        (long) BuildOrderModel.MOST_RUNS + (long) trials.count() * (1 + StudyCost.VERDICTS));
  }

  @Override
  public Studied<BuildOrderStudy> run(Workbench bench) {
    var turns = bench.each(trials.count(), 1, trials::turns);
    var readings = trials.readings(turns);
    List<BuildOrderStudy> study = bench.each(1, i -> model.study(readings));
    return new Studied<>(study.get(0), List.of(), List.of(), phases());
  }

  /** What is there after each phase can hurt in its own way: a tank alone vents its gas. */
  private List<Studied.Considered> phases() {
    List<Studied.Considered> phases = new ArrayList<>();
    model
        .built()
        .forEach(
            (plan, run) -> phases.add(new Studied.Considered(plan, PlanEstimate.undecided(run))));
    return List.copyOf(phases);
  }
}
