package org.marshlight.economy;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What an investment comes to: payments at the ends of the years, real prices.
 *
 * @param expectedNetPresentValue the same weighed with the probability that it still works
 * @param internalRate discount rate at which the plant as planned is just worth its cost
 * @param discountedPaybackYears years until the plant as planned has paid itself back
 * @param neverPays whether it does not within its life
 * @param levelisedCostPerKWh cost of a kWh of useful energy, money and energy discounted alike
 * @param sign what these say
 */
@Meaning("What an investment comes to: payments at the ends of the years, at real prices.")
public record AppraisalEstimate(
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "To be paid at the start, credits and sunk costs taken off.")
        double investment,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "What energy saves a year, at today's prices.")
        double yearlyEnergySaving,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "What else it saves or earns a year.")
        double yearlyOtherSaving,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Upkeep, bought energy and valued work a year.")
        double yearlyCost,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Worth today of all that, if the plant works through its life.")
        double netPresentValue,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning =
                "Worth today of all that, each year weighed with the probability that the plant"
                    + " still works.")
        double expectedNetPresentValue,
    @Quantity(
            unit = "1",
            min = -1,
            max = 10,
            meaning =
                "Discount rate at which the plant as planned is just worth its cost; null where"
                    + " none is, or where nothing is invested.")
        Double internalRate,
    @Quantity(
            unit = "a",
            min = 0,
            max = 100,
            meaning =
                "Years until the discounted savings of the plant as planned equal the investment;"
                    + " each falls at the end of its year, parts of a year by the same law; null"
                    + " where they do not within its life.")
        Double discountedPaybackYears,
    @Meaning("Whether it is not paid back within its life.") boolean neverPays,
    @Quantity(
            unit = "1/(kW.h)",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning =
                "Cost of a kWh of useful energy, money and energy discounted alike and weighed with"
                    + " the probability that the plant still works; null without useful energy.")
        Double levelisedCostPerKWh,
    @Meaning("Expected net present value at the corners of price and life.") @Size(max = 4)
        List<Swing> swings,
    @NotNull @Meaning("What the expected net present value says at these corners.") Sign sign) {

  /** What the sign of the expected net present value is over the swing of price and life. */
  public enum Sign {
    /** Not below nought at any corner. */
    PAYS,
    /** Below nought at some. */
    UNSURE,
    /** Below nought at all. */
    DOES_NOT_PAY
  }

  /**
   * Expected net present value at one corner.
   *
   * @param expectedNetPresentValue what it comes to
   */
  @Meaning("Expected net present value at one corner of price and life.")
  public record Swing(
      @Quantity(unit = "1", min = 0, max = 2, meaning = "Fuel price over that of the plan.")
          double priceFactor,
      @Quantity(unit = "a", min = 0, max = 200, meaning = "Life.") double lifeYears,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Expected net present value.")
          double expectedNetPresentValue) {}

  /** Least expected net present value of all corners and the middle. */
  public double least() {
    return swings.stream()
        .mapToDouble(Swing::expectedNetPresentValue)
        .reduce(expectedNetPresentValue, Math::min);
  }

  /** Greatest expected net present value of all corners and the middle. */
  public double most() {
    return swings.stream()
        .mapToDouble(Swing::expectedNetPresentValue)
        .reduce(expectedNetPresentValue, Math::max);
  }
}
