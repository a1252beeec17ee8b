package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Verdict;

/**
 * How sure the figures of a plan are.
 *
 * @param drawsWithoutAnswer draws whose numbers are not possible together
 */
@Meaning("How sure the figures of a plan are.")
public record UncertaintyStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Quantity(unit = "1", min = 16, max = 16384, meaning = "How many draws were made.") int draws,
    @Quantity(unit = "1", min = 0, max = 2147483647, meaning = "Their seed.") int seed,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "How many numbers were drawn in each.")
        int uncertainNumbers,
    @Quantity(
            unit = "1",
            min = 0,
            max = 16384,
            meaning = "Draws whose numbers are not possible together; they are left out.")
        int drawsWithoutAnswer,
    @Meaning("Each figure.") @Size(max = 300) List<FigureSpread> figures,
    @Meaning("Each verdict; none unless asked for.") @Size(max = 40) List<VerdictOdds> verdicts) {

  /**
   * How one figure spreads.
   *
   * @param pointer pointer to it in an estimate
   * @param spread over coefficients, stated ranges and climate
   */
  @Meaning("How one figure spreads.")
  public record FigureSpread(
      @Meaning("Name of the figure.") @Size(max = 400) String name,
      @Meaning("RFC 6901 pointer to it in an estimate.") @Size(max = 400) String pointer,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 500) String meaning,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What the plan gives as it is; null if it has no value.")
          Double central,
      @Quantity(
              unit = "1",
              min = 0,
              max = 16384,
              meaning = "Draws in which the figure has no value.")
          int drawsWithoutValue,
      @Meaning("Over coefficients, stated ranges and climate; null if no draw has a value.")
          DrawnSpread spread,
      @Meaning("Of the model itself, were every coefficient right; null where none is stated.")
          DrawnSpread modelError,
      @Meaning("Both at once; null where no model error is stated.") DrawnSpread together) {}

  /** How sure one verdict is. */
  @Meaning("How sure one verdict is.")
  public record VerdictOdds(
      @Meaning("The part judged.") Verdict.Component component,
      @Meaning("Name of the bed, for one of several beds; null otherwise.") @Size(max = 20)
          String bed,
      @Meaning("The verdict on the plan as it is.") Verdict.Worth central,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Share of the draws that say yes.")
          double yesFraction,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Standard error of that share.")
          double yesError,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Share that say marginal.")
          double marginalFraction,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Share that say no.") double noFraction) {}
}
