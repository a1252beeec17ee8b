package org.marshlight.loop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Nearest;
import org.marshlight.contract.Pointer;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.CoefficientSet;

/**
 * The one place that decides whether a plan is legal. It finds every fault at once: of a single
 * field, of a name that no catalogue has, and of fields that contradict each other.
 */
public final class PlanCheck {

  /**
   * Unknown coefficients that are answered with the nearest known one; whoever sends more guesses.
   */
  private static final int MOST_SUGGESTIONS = 20;

  private static final String ALLOWED = "an id of /v1/coefficients";

  private PlanCheck() {}

  /**
   * Every fault of a plan, in the order of their pointers.
   *
   * @param plan the plan as read
   */
  public static List<Fault> faults(Plan plan) {
    List<Fault> faults = new ArrayList<>(RecordCheck.faults(plan));
    coefficientFaults(plan, faults);
    if (faults.isEmpty()) {
      faults.addAll(PlanRules.faults(plan));
    }
    faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::code));
    return List.copyOf(faults);
  }

  /**
   * Every fault of a plan that is asked for one stage: those of the plan, and what the stage needs
   * and the plan does not have.
   */
  public static List<Fault> faults(Plan plan, Stage stage) {
    List<Fault> faults = new ArrayList<>(faults(plan));
    faults.addAll(PlanRules.faults(plan, stage));
    faults.sort(Comparator.comparing(Fault::pointer).thenComparing(Fault::code));
    return List.copyOf(faults);
  }

  /**
   * What keeps a legal plan from having an answer with other coefficients than its own.
   *
   * @param plan a legal plan
   * @param set coefficients, each within what a plan may set
   */
  public static List<Fault> faults(Plan plan, CoefficientSet set) {
    return List.copyOf(PlanRules.faults(plan, set));
  }

  private static void coefficientFaults(Plan plan, List<Fault> faults) {
    Map<String, Double> overrides =
        plan.coefficients() == null ? Map.of() : new TreeMap<>(plan.coefficients());
    CoefficientBook book = CoefficientBook.standard();
    int[] unknown = {0};
    overrides.forEach(
        (id, value) -> {
          String pointer = Pointer.child("/coefficients", id);
          CoefficientRow row = book.find(id).orElse(null);
          if (row == null) {
            unknown[0]++;
            faults.add(
                unknown[0] > MOST_SUGGESTIONS
                    ? noCoefficient(pointer, id)
                    : unknownCoefficient(pointer, id));
          } else if (value == null || !(value >= row.least() && value <= row.most())) {
            faults.add(
                RecordCheck.outOfRange(pointer, value, id, row.least(), row.most(), row.unit()));
          }
        });
  }

  /**
   * An id that no coefficient has.
   *
   * @param pointer where it stands
   * @param id the id
   */
  public static Fault unknownCoefficient(String pointer, String id) {
    List<String> ids = CoefficientBook.standard().rows().stream().map(CoefficientRow::id).toList();
    return Nearest.to(id, ids)
        .map(
            nearest ->
                Fault.of("loop.unknown-coefficient", pointer, id, ALLOWED, "nearest", nearest))
        .orElseGet(() -> noCoefficient(pointer, id));
  }

  private static Fault noCoefficient(String pointer, String id) {
    return Fault.of("loop.no-such-coefficient", pointer, id, ALLOWED);
  }
}
