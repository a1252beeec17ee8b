package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Verdict;

/**
 * How figures change with one or two numbers of a plan. Values stand in the order of the points:
 * with two numbers, all values of the second for the first value of the first, then for its second.
 */
@Meaning(
    "How figures change with one or two numbers of a plan; of two, the second runs through its"
        + " values for each value of the first.")
public record SweepStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Quantity(unit = "1", min = 1, max = 500, meaning = "How many points were run.") int points,
    @Meaning("What was swept.") @Size(max = 2) List<Axis> axes,
    @Meaning("Each figure.") @Size(max = 300) List<Curve> figures,
    @Meaning("Each verdict; none unless asked for.") @Size(max = 40) List<Answers> verdicts) {

  /**
   * A number that was swept.
   *
   * @param pointer pointer to it in the plan
   */
  @Meaning("A number that was swept.")
  public record Axis(
      @Meaning("RFC 6901 pointer to it in the plan.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 2000) String meaning,
      @Size(max = 500)
          @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Its values.")
          List<Double> values) {}

  /**
   * A figure at each point.
   *
   * @param pointer pointer to it in an estimate
   */
  @Meaning("A figure at each point.")
  public record Curve(
      @Meaning("Name of the figure.") @Size(max = 400) String name,
      @Meaning("RFC 6901 pointer to it in an estimate.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 500) String meaning,
      @Size(max = 500)
          @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Its value at each point; null where it has none.")
          List<Double> values) {}

  /** A verdict at each point. */
  @Meaning("A verdict at each point.")
  public record Answers(
      @Meaning("The part judged.") Verdict.Component component,
      @Meaning("Name of the bed, for one of several beds; null otherwise.") @Size(max = 20)
          String bed,
      @Meaning("The answer at each point; null where the part is not there.") @Size(max = 500)
          List<Verdict.Worth> answers) {}
}
