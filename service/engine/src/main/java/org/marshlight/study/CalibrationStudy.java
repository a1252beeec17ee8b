package org.marshlight.study;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Reason;
import org.marshlight.loop.Plan;

/**
 * Readings against the model, and coefficients that fit them.
 *
 * @param reducedChiSquare squared deviations after the fit over their number less that of the
 *     coefficients: about one if readings and model agree within their uncertainties
 */
@Meaning("Readings against the model, and coefficients that fit them.")
public record CalibrationStudy(
    @Meaning("What the study took.") StudyCost cost,
    @Meaning("Fitted coefficients; empty if none was to be fitted.") @Size(max = 8)
        List<Fitted> coefficients,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "Squared deviations over their number less that of the coefficients: about one if"
                    + " readings and model agree within the readings' uncertainties.")
        double reducedChiSquare,
    @Meaning("Each reading against the model.") @Size(max = 24) List<ComparedMonth> months,
    @Quantity(
            unit = "1",
            min = 0,
            max = 24,
            meaning = "How many readings lie outside of the predicted band.")
        int outside,
    @Meaning("What to look at.") @Size(max = 20) List<Reason> causes,
    @Meaning("The plan with the fitted coefficients set.") Plan plan) {

  /** How much the readings say of a coefficient. */
  public enum Told {
    /** More than the book does. */
    WELL,
    /** No more than the book does. */
    WEAKLY,
    /** Nothing that could be told from another coefficient or from nothing. */
    NOT,
    /** They would have it beyond what it may be. */
    AT_BOUND
  }

  /** A fitted coefficient. */
  @Meaning("A fitted coefficient.")
  public record Fitted(
      @Meaning("Id of the coefficient.") @Size(max = 200) String id,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Meaning("What it is.") @Size(max = 2000) String meaning,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Fitted value.")
          double value,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Value before.")
          double before,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Lower end of its interval of 95 percent, cut at what it may be; null if it is not told.")
          Double low,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Upper end of its interval of 95 percent, cut at what it may be; null if it is not told.")
          Double high,
      @Meaning("How much the readings say of it.") Told told) {}

  /** Where a reading lies. */
  public enum Place {
    BELOW,
    INSIDE,
    ABOVE
  }

  /** A reading against the model. */
  @Meaning("A reading against the model.")
  public record ComparedMonth(
      @Meaning("What was read.") ReadingKind kind,
      @Quantity(unit = "1", min = 1, max = 12, meaning = "The month, 1 = January.") int month,
      @Meaning("UCUM code.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What was read.")
          double measured,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Standard uncertainty of it.")
          double uncertainty,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "What the model gives, with fitted coefficients if there are any.")
          double modelled,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Measured less modelled.")
          double residual,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Fifth percentile of what was to be expected, the model's own error included.")
          double p5,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Ninety-fifth percentile.")
          double p95,
      @Meaning("Where the reading lies; outside only if by more than its own uncertainty explains.")
          Place place) {}
}
