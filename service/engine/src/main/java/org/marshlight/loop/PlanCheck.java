package org.marshlight.loop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Pointer;
import org.marshlight.contract.Suggestion;
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
    return sorted(faults(plan, List.of()));
  }

  /**
   * Every fault of a plan of which not everything could be read: faults of form first, then those
   * of range and of the rules that join fields. A rule is not asked about a section in which a
   * field alone is wrong.
   *
   * @param plan what could be read; null if nothing could
   * @param stage the stage asked for
   * @param unreadable faults of form, by pointers into the plan
   */
  public static List<Fault> faults(Plan plan, Stage stage, List<Fault> unreadable) {
    if (plan == null) {
      return List.copyOf(unreadable);
    }
    List<Fault> faults = faults(plan, unreadable);
    if (unreadable.stream().allMatch(PlanCheck::leavesSections)) {
      faults.addAll(PlanRules.faults(plan, stage));
    }
    return Faults.joined(unreadable, sorted(faults));
  }

  /** Whether every section is still there, so that none is found missing that was sent. */
  private static boolean leavesSections(Fault unreadable) {
    List<String> path = Pointer.names(unreadable.pointer());
    return path.size() > 1 && !path.get(0).equals("given");
  }

  private static List<Fault> faults(Plan plan, List<Fault> unreadable) {
    List<Fault> faults = new ArrayList<>(RecordCheck.faults(plan));
    coefficientFaults(plan, faults);
    List<Fault> single = new ArrayList<>(unreadable);
    single.addAll(faults);
    faults.addAll(PlanRules.faults(SoundSections.of(plan, single)));
    return faults;
  }

  private static List<Fault> sorted(List<Fault> faults) {
    return faults.stream()
        .sorted(Comparator.comparing(Fault::pointer).thenComparing(Fault::code))
        .toList();
  }

  /**
   * Every fault of a plan that is asked for one stage: those of the plan, and what the stage needs
   * and the plan does not have.
   */
  public static List<Fault> faults(Plan plan, Stage stage) {
    List<Fault> faults = new ArrayList<>(faults(plan));
    faults.addAll(PlanRules.faults(plan, stage));
    return sorted(faults);
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
    return Suggestion.closeTo(id, ids).isEmpty()
        ? noCoefficient(pointer, id)
        : Fault.unknown("loop.unknown-coefficient", pointer, id, id, ids, ALLOWED);
  }

  private static Fault noCoefficient(String pointer, String id) {
    return Fault.of("loop.no-such-coefficient", pointer, id, ALLOWED);
  }
}
