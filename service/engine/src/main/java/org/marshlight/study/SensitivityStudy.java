package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Which uncertain numbers matter.
 *
 * @param pointsWithoutAnswer points whose numbers are not possible together
 */
@Meaning("Which uncertain numbers matter.")
public record SensitivityStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Quantity(unit = "1", min = 16, max = 16384, meaning = "Points of each of the two samples.")
        int points,
    @Quantity(unit = "1", min = 0, max = 2147483647, meaning = "Seed.") int seed,
    @Quantity(
            unit = "1",
            min = 1,
            max = Quantity.UNBOUNDED,
            meaning = "How many numbers are uncertain.")
        int uncertainNumbers,
    @Meaning("How they were screened; null where they were few enough to keep all.")
        Screening screening,
    @Quantity(
            unit = "1",
            min = 0,
            max = 16384,
            meaning = "Points whose numbers are not possible together; they are left out.")
        int pointsWithoutAnswer,
    @Meaning("What matters for each figure.") @Size(max = 240) List<FigureIndices> figures) {

  /** A screening by elementary effects. */
  @Meaning("A screening by elementary effects (Morris).")
  public record Screening(
      @Quantity(unit = "1", min = 2, max = 50, meaning = "How often each number was moved.")
          int trajectories,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "The weakest strength that was still kept.")
          double keptStrength,
      @Meaning("The strongest numbers, kept and not, strongest first.") @Size(max = 60)
          List<Effect> effects) {}

  /**
   * How strong a number is.
   *
   * @param pointer pointer to it in the plan, or the name of a climate shift
   */
  @Meaning("How strong a number is.")
  public record Effect(
      @Meaning("RFC 6901 pointer to it in the plan, or the name of a climate shift.")
          @Size(max = 400)
          String pointer,
      @Meaning("What it is.") @Size(max = 2000) String meaning,
      @Meaning("The figure on which it acts most.") @Size(max = 400) String figure,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Mean size of its elementary effects on that figure over the figure's standard"
                      + " deviation in the screening.")
          double strength,
      @Meaning("Whether indices were estimated for it.") boolean kept) {}

  /**
   * What matters for one figure.
   *
   * @param pointer pointer to it in an estimate
   * @param deviation standard deviation over the numbers kept
   * @param sumOfFirst sum of the first-order indices; what it lacks of one is interaction
   * @param indices each number kept, the strongest first
   */
  @Meaning("What matters for one figure.")
  public record FigureIndices(
      @Meaning("Name of the figure.") @Size(max = 400) String name,
      @Meaning("RFC 6901 pointer to it in an estimate.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 500) String meaning,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Standard deviation over the numbers kept; null if it has no values.")
          Double deviation,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Sum of the first-order indices; what it lacks of one is interaction. Null if the"
                      + " figure does not vary.")
          Double sumOfFirst,
      @Meaning("Each number kept, the strongest first; none if the figure does not vary.")
          @Size(max = 60)
          List<Index> indices) {}

  /**
   * How much of a figure's variance one number carries, with intervals of 95 percent.
   *
   * @param number pointer to it in the plan, or the name of a climate shift
   * @param first alone
   * @param firstLow lower end
   * @param firstHigh upper end
   * @param total with all its interactions
   * @param totalLow lower end
   * @param totalHigh upper end
   */
  @Meaning("How much of a figure's variance one number carries, with intervals of 95 percent.")
  public record Index(
      @Meaning("RFC 6901 pointer to it in the plan, or the name of a climate shift.")
          @Size(max = 400)
          String number,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Alone: first-order Sobol index.")
          double first,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Lower end of its interval.")
          double firstLow,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Upper end of its interval.")
          double firstHigh,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "With all its interactions: total Sobol index.")
          double total,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Lower end of its interval.")
          double totalLow,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Upper end of its interval.")
          double totalHigh) {}
}
