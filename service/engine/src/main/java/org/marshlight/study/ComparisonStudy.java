package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Reason;
import org.marshlight.decision.Verdict;

/** A plan and its variants side by side. Lists of values stand in the order of the variants. */
@Meaning("A plan and its variants side by side; lists stand in the order of the variants.")
public record ComparisonStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Meaning("Each figure, of the plan and of each variant.") @Size(max = 300)
        List<ComparedFigure> figures,
    @Meaning("What else changes, variant by variant.") @Size(max = 20)
        List<ComparedVariant> variants) {

  /**
   * One figure.
   *
   * @param pointer pointer to it in an estimate
   */
  @Meaning("One figure, of the plan and of each variant.")
  public record ComparedFigure(
      @Meaning("Name of the figure.") @Size(max = 400) String name,
      @Meaning("RFC 6901 pointer to it in an estimate.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 500) String meaning,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Of the plan as it is; null if it has none.")
          Double base,
      @Size(max = 20)
          @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Of each variant; null where it has none.")
          List<Double> variants,
      @Size(max = 20)
          @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Of each variant less the plan's; null where one of the two has none.")
          List<Double> differences) {}

  /** What changes in a variant beside its figures. */
  @Meaning("What changes in a variant beside its figures.")
  public record ComparedVariant(
      @Meaning("What it is called.") @Size(max = 200) String name,
      @Meaning("Verdicts whose answer or reasons change.") @Size(max = 40)
          List<ChangedVerdict> verdicts,
      @Meaning("Codes of remarks that the plan did not have.") @Size(max = 200)
          List<String> noticesGained,
      @Meaning("Codes of remarks that only the plan had.") @Size(max = 200)
          List<String> noticesLost) {}

  /** A verdict that changes. */
  @Meaning("A verdict that changes.")
  public record ChangedVerdict(
      @Meaning("The part judged.") Verdict.Component component,
      @Meaning("Name of the bed, for one of several beds; null otherwise.") @Size(max = 20)
          String bed,
      @Meaning("The verdict on the plan; null if it has no such part.") Verdict.Worth base,
      @Meaning("The verdict on the variant; null if it has no such part.") Verdict.Worth variant,
      @Meaning("Codes of reasons and conditions that the plan did not have.") @Size(max = 100)
          List<String> reasonsGained,
      @Meaning("Codes that only the plan had.") @Size(max = 100) List<String> reasonsLost,
      @Meaning("The variant's reasons, with their numbers.") @Size(max = 40)
          List<Reason> reasons) {}
}
