package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Reason;

/**
 * The smallest sizes that meet targets, or why none does.
 *
 * @param sizes the smallest sizes; the sizes that come nearest if the targets cannot be met
 */
@Meaning("The smallest sizes that meet targets, or why none does.")
public record SizingStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Meaning("Whether the targets can be met.") Reach answer,
    @Meaning("The smallest sizes; those that come nearest if the targets cannot be met.")
        @Size(max = 2)
        List<Sized> sizes,
    @Meaning("Each target at these sizes, and the best that can be reached.") @Size(max = 10)
        List<Reached> targets,
    @Meaning("Why the targets cannot be met; empty if they can.") @Size(max = 20)
        List<Reason> reasons,
    @Meaning("With two free numbers, the smallest first for each of some values of the second.")
        @Size(max = 20)
        List<Pair> frontier) {

  /** Whether targets can be met. */
  public enum Reach {
    MET,
    CANNOT
  }

  /**
   * The size of one part.
   *
   * @param pointer pointer to it in the plan
   */
  @Meaning("The size of one part.")
  public record Sized(
      @Meaning("RFC 6901 pointer to it in the plan.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 2000) String meaning,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Its size.")
          double value,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What the plan has; null if it has none.")
          Double present,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Least value tried.")
          double low,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest value tried.")
          double high) {}

  /**
   * How one target fares.
   *
   * @param pointer pointer to it in an estimate
   */
  @Meaning("How one target fares.")
  public record Reached(
      @Meaning("Name of the figure.") @Size(max = 400) String figure,
      @Meaning("RFC 6901 pointer to it in an estimate.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Least value asked for; null if a greatest one was.")
          Double atLeast,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest value asked for; null if a least one was.")
          Double atMost,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Of the plan as it is; null if it has none.")
          Double present,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "At the sizes told; null if there is none.")
          Double value,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "The best over all sizes tried; null if there is none.")
          Double best,
      @Meaning("Whether the target is met at the sizes told.") boolean met) {}

  /**
   * One point of the frontier.
   *
   * @param first the smallest first number that meets the targets, in its unit; null if none does
   * @param second the second number, in its unit
   */
  @Meaning("One point of the frontier.")
  public record Pair(
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "The smallest first number that meets the targets; null if none does.")
          Double first,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "The second number.")
          double second) {}
}
