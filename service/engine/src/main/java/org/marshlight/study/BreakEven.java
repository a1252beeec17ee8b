package org.marshlight.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.WireName;
import org.marshlight.decision.BreakEvenModel;
import org.marshlight.decision.BreakEvenStudy;
import org.marshlight.decision.BreakEvenStudy.Change;
import org.marshlight.decision.Lever;
import org.marshlight.decision.Verdict;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.Plan;
import org.marshlight.loop.Stage;

/** Looks for the smallest change of one lever after the other that turns a verdict. */
final class BreakEven implements PreparedStudy<BreakEvenStudy> {

  private final BaseRun base;
  private final BreakEvenModel model;
  private final List<Lever> levers;

  private BreakEven(BaseRun base, BreakEvenModel model, List<Lever> levers) {
    this.base = base;
    this.model = model;
    this.levers = levers;
  }

  static BreakEven of(BreakEvenRequest request) {
    List<Fault> faults = new ArrayList<>();
    BaseRun base = BaseRun.of(request.plan());
    bed(request, base, faults);
    levers(request, faults);
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
    BreakEvenModel model =
        new BreakEvenModel(
            base.plan(), base.site(), base.set(), request.component(), request.bed());
    return new BreakEven(
        base,
        model,
        request.levers() == null ? List.of(Lever.values()) : List.copyOf(request.levers()));
  }

  /** One of several beds is named, by a name that the plan has; nothing else is. */
  private static void bed(BreakEvenRequest request, BaseRun base, List<Fault> faults) {
    if (request.component() != Component.BED) {
      if (request.bed() != null) {
        faults.add(Fault.of("study.bed-not-asked", "/bed", request.bed(), "absent"));
      }
      return;
    }
    List<String> names =
        base.outcome().verdicts().stream().map(Verdict::bed).filter(Objects::nonNull).toList();
    if (request.bed() == null || !names.contains(request.bed())) {
      faults.add(
          Fault.of(
              "study.no-such-bed",
              "/bed",
              request.bed(),
              names.isEmpty()
                  ? "another component: the plan has not several beds"
                  : String.join(", ", names)));
    }
  }

  private static void levers(BreakEvenRequest request, List<Fault> faults) {
    Set<Lever> seen = new HashSet<>();
    List<Lever> levers = request.levers() == null ? List.of() : request.levers();
    for (int i = 0; i < levers.size(); i++) {
      if (!seen.add(levers.get(i))) {
        faults.add(
            Fault.of(
                "study.lever-twice",
                Pointer.child("/levers", i),
                WireName.of(levers.get(i)),
                "another lever, or none"));
      }
    }
  }

  @Override
  public String costliestField() {
    return "/levers";
  }

  @Override
  public StudyCost cost() {
    return StudyCost.of(
        (long) levers.size() * BreakEvenModel.MOST_VERDICTS * (1 + StudyCost.VERDICTS));
  }

  @Override
  public Studied<BreakEvenStudy> run(Workbench bench) {
    List<Change> changes = bench.each(levers.size(), 1, i -> model.change(levers.get(i)));
    List<Studied.Considered> considered =
        changes.stream().map(this::considered).filter(Objects::nonNull).toList();
    return new Studied<>(
        new BreakEvenStudy(model.now(), List.copyOf(changes)), List.of(), List.of(), considered);
  }

  /**
   * The plan that a change makes; null where it makes none but the plan as it is, or one whose
   * still cannot reach what is asked of it.
   */
  private Studied.Considered considered(Change change) {
    if (change.needed() == null || change.needed().equals(change.now())) {
      return null;
    }
    Plan changed = model.changed(change).orElseThrow();
    Outcome outcome =
        PossibleRun.of(new Sites(base), changed, LoopModel.coefficients(changed), Stage.LOOP);
    return outcome == null ? null : new Studied.Considered(changed, outcome.estimate());
  }
}
