package org.marshlight.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Pointer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.decision.Reason;
import org.marshlight.decision.Verdict;
import org.marshlight.loop.PlanCheck;
import org.marshlight.loop.Stage;

/** Puts a plan and its variants side by side. */
final class Comparison implements PreparedStudy<ComparisonStudy> {

  private final BaseRun base;
  private final List<VariantPlan> variants;
  private final List<Outcome> outcomes;
  private final Figures figures;
  private final StudyCost cost;

  private Comparison(
      BaseRun base,
      List<VariantPlan> variants,
      List<Outcome> outcomes,
      Figures figures,
      StudyCost cost) {
    this.base = base;
    this.variants = variants;
    this.outcomes = outcomes;
    this.figures = figures;
    this.cost = cost;
  }

  static Comparison of(ComparisonRequest request) {
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < request.variants().size(); i++) {
      VariantPlan variant = request.variants().get(i);
      for (Fault fault : PlanCheck.faults(variant.plan(), Stage.LOOP)) {
        faults.add(inVariant(fault, variant.name(), i));
      }
    }
    refuse(faults);
    BaseRun base = BaseRun.of(request.plan());
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < request.variants().size(); i++) {
      VariantPlan variant = request.variants().get(i);
      try {
        outcomes.add(base.run(variant.plan()));
      } catch (Faults unanswerable) {
        for (Fault fault : unanswerable.list()) {
          faults.add(inVariant(fault, variant.name(), i));
        }
      }
    }
    refuse(faults);
    List<String> words =
        request.outputs() == null ? List.of(Figures.ANNUAL, Figures.DECISION) : request.outputs();
    Figures figures = figures(words, base.outcome(), outcomes);
    long runs = (long) (1 + outcomes.size()) * (1 + StudyCost.VERDICTS);
    return new Comparison(base, request.variants(), outcomes, figures, StudyCost.of(runs));
  }

  private static void refuse(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new Faults(faults);
    }
  }

  private static Fault inVariant(Fault fault, String variant, int index) {
    return VariantFault.of(fault, variant, Pointer.child("/variants", index) + "/plan");
  }

  /** Figures that the plan or any variant has; a part may be only in one of them. */
  private static Figures figures(List<String> words, Outcome base, List<Outcome> outcomes) {
    Map<String, Figure> found = new LinkedHashMap<>();
    Faults missing = null;
    boolean any = false;
    for (Outcome outcome : Stream.concat(Stream.of(base), outcomes.stream()).toList()) {
      try {
        for (Figure figure : Figures.of(words, outcome, "/outputs").list()) {
          found.putIfAbsent(figure.name(), figure);
        }
        any = true;
      } catch (Faults notThere) {
        missing = missing == null ? notThere : missing;
      }
    }
    if (!any) {
      throw missing;
    }
    return new Figures(List.copyOf(found.values()), true);
  }

  @Override
  public String costliestField() {
    return "/variants";
  }

  @Override
  public StudyCost cost() {
    return cost;
  }

  @Override
  public List<Studied.Considered> considered() {
    List<Studied.Considered> considered = new ArrayList<>();
    for (int i = 0; i < outcomes.size(); i++) {
      considered.add(
          new Studied.Considered(
              variants.get(i).plan(), PlanEstimate.undecided(outcomes.get(i).run())));
    }
    return List.copyOf(considered);
  }

  @Override
  public Studied<ComparisonStudy> run(Workbench bench) {
    bench.each(
        outcomes.size() + 1,
        1,
        i -> i == 0 ? base.outcome().verdicts() : outcomes.get(i - 1).verdicts());
    List<ComparisonStudy.ComparedFigure> compared = new ArrayList<>();
    for (Figure figure : figures.list()) {
      compared.add(compared(figure));
    }
    List<ComparisonStudy.ComparedVariant> changed = new ArrayList<>();
    for (int i = 0; i < outcomes.size(); i++) {
      changed.add(changed(variants.get(i).name(), outcomes.get(i)));
    }
    return new Studied<>(
        new ComparisonStudy(cost, List.copyOf(compared), List.copyOf(changed)),
        List.of(),
        List.of(),
        considered());
  }

  private ComparisonStudy.ComparedFigure compared(Figure figure) {
    double own = figure.value(base.outcome());
    double[] values = outcomes.stream().mapToDouble(figure::value).toArray();
    double[] differences = values.clone();
    for (int i = 0; i < differences.length; i++) {
      differences[i] -= own;
    }
    return new ComparisonStudy.ComparedFigure(
        figure.name(),
        figure.pointer(),
        figure.unit(),
        figure.meaning(),
        Double.isNaN(own) ? null : (Double) own,
        Months.list(values),
        Months.list(differences));
  }

  private ComparisonStudy.ComparedVariant changed(String name, Outcome outcome) {
    List<ComparisonStudy.ChangedVerdict> changed = new ArrayList<>();
    Set<Judged> all = new LinkedHashSet<>(Judged.answers(base.outcome().verdicts()).keySet());
    all.addAll(Judged.answers(outcome.verdicts()).keySet());
    for (Judged judged : all) {
      Verdict before = find(base.outcome(), judged);
      Verdict after = find(outcome, judged);
      List<String> gained = beyond(codes(after), codes(before));
      List<String> lost = beyond(codes(before), codes(after));
      boolean same =
          before == null ? after == null : after != null && before.answer() == after.answer();
      if (!same || !gained.isEmpty() || !lost.isEmpty()) {
        changed.add(
            new ComparisonStudy.ChangedVerdict(
                judged.component(),
                judged.bed(),
                before == null ? null : before.answer(),
                after == null ? null : after.answer(),
                gained,
                lost,
                after == null ? List.of() : after.reasons()));
      }
    }
    List<String> own = notices(base.outcome());
    List<String> others = notices(outcome);
    return new ComparisonStudy.ComparedVariant(
        name, List.copyOf(changed), beyond(others, own), beyond(own, others));
  }

  private static Verdict find(Outcome outcome, Judged judged) {
    return outcome.verdicts().stream()
        .filter(verdict -> Judged.of(verdict).equals(judged))
        .findFirst()
        .orElse(null);
  }

  private static List<String> codes(Verdict verdict) {
    return verdict == null
        ? List.of()
        : Stream.concat(verdict.reasons().stream(), verdict.conditions().stream())
            .map(Reason::code)
            .toList();
  }

  private static List<String> notices(Outcome outcome) {
    return outcome.run().allNotices().stream().map(Notice::code).toList();
  }

  private static List<String> beyond(List<String> codes, List<String> others) {
    TreeSet<String> beyond = new TreeSet<>(codes);
    others.forEach(beyond::remove);
    return List.copyOf(beyond);
  }
}
