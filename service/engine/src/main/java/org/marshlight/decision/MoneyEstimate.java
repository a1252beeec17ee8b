package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.economy.PlanPart;

/**
 * The whole plan in money. Savings and costs fall at the ends of the years, at real prices; fuel
 * prices grow from the day of building on.
 *
 * @param currency ISO 4217 code
 * @param usefulEnergyPricePerKWh price of useful heat from the displaced fuel
 * @param conventions net present value by each convention in use
 * @param budgetLeft budget less investment
 */
@Meaning("The whole plan in money: savings and costs at the ends of the years, at real prices.")
public record MoneyEstimate(
    @Meaning("ISO 4217 code; null where the plan names none.") @Size(max = 3) String currency,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "What would have to be spent in any case, taken off the investment.")
        double credited,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Cost of parts that already stand, which does not count.")
        double sunk,
    @Meaning("Parts of the plan whose cost is not given, counted as nought.") @Size(max = 6)
        List<PlanPart> costsNotGiven,
    @NotNull @Meaning("What the plan comes to.") AppraisalEstimate appraisal,
    @Quantity(
            unit = "1/(kW.h)",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "Price of useful heat from the displaced fuel; null where its price is not given.")
        Double usefulEnergyPricePerKWh,
    @Meaning("Net present value by each convention in use, which differ by some percent.")
        @Size(max = 3)
        List<Convention> conventions,
    @Meaning("The years of its life.") @Size(max = 60) List<Year> years,
    @Quantity(
            unit = "1",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Budget less investment; null where the plan names no budget.")
        Double budgetLeft) {

  /** When money of a year is taken to flow. */
  public enum Timing {
    /** At the end of each year, prices growing from the day of building. */
    YEAR_END,
    /** At the end of each year, the first amount not grown. */
    YEAR_END_FIRST_NOT_GROWN,
    /** Evenly through the year. */
    CONTINUOUS
  }

  /** Net present value by one convention. */
  @Meaning("Net present value by one convention.")
  public record Convention(
      @NotNull @Meaning("The convention.") Timing timing,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Present worth of a yearly unit of energy cost.")
          double energyFactor,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Present worth of a yearly unit of other money.")
          double otherFactor,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Net present value of the plan.")
          double netPresentValue) {}

  /**
   * One year.
   *
   * @param year year after building; the last may be part of one
   * @param cumulative worth today of all to the end of the year, investment taken off, if it works
   */
  @Meaning("One year.")
  public record Year(
      @Quantity(unit = "1", min = 1, max = 60, meaning = "Year after building.") int year,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Savings less costs of a working plant.")
          double net,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Probability that it still works.")
          double workingFraction,
      @Quantity(unit = "1", min = 0, max = Quantity.UNBOUNDED, meaning = "Worth today of one unit.")
          double discountFactor,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Worth today of all to the end of the year, investment taken off, if the plant"
                      + " works.")
          double cumulative) {}
}
