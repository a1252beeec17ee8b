package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.decision.Verdict.Worth;

/**
 * An order in which to build.
 *
 * @param currency ISO 4217 code
 * @param budget money at hand
 */
@Meaning("An order in which to build.")
public record BuildOrderStudy(
    @Meaning("ISO 4217 code; null where the plan names none.") @Size(max = 3) String currency,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Money at hand; null where the plan sets no limit.")
        Double budget,
    @Quantity(unit = "1", min = 0, max = Quantity.UNBOUNDED, meaning = "What the phases cost.")
        double spent,
    @Meaning("Phase 0: readings that could change a verdict.") @Size(max = 20)
        List<Reading> readings,
    @Meaning("What to build, first to last.") @Size(max = 10) List<Phase> phases,
    @Meaning("What not to build.") @Size(max = 10) List<LeftOut> leftOut) {

  /** Parts that are built one by one. */
  public enum Step {
    TANK,
    GAS_CAPTURE,
    GLASS,
    NIGHT_INSULATION,
    CO_FEEDING,
    BEDS,
    FUEL_ALCOHOL,
    COMPOST
  }

  /**
   * What is built next.
   *
   * @param marginalExpectedNetPresentValue what it adds in money
   */
  @Meaning("What is built next.")
  public record Phase(
      @Quantity(unit = "1", min = 1, max = 10, meaning = "Place in the order, from 1.") int number,
      @NotNull @Meaning("What is built.") Step step,
      @Meaning("What must stand before it.") @Size(max = 5) List<Step> needs,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What it costs; nought where that is not given.")
          double cost,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "What it and all before it cost.")
          double spentSoFar,
      @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Useful energy a year that it adds to what stands before it.")
          double marginalUsefulKWh,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Expected net present value that it adds to what stands before it; null where cost"
                      + " or price is not given.")
          Double marginalExpectedNetPresentValue,
      @NotNull @Meaning("Greenhouse gases that it adds, with what it spares.")
          GreenhouseGasEstimate.Weight marginalGases,
      @NotNull @Meaning("Why here.") Reason reason) {}

  /** What is not built. */
  @Meaning("What is not built.")
  public record LeftOut(
      @NotNull @Meaning("The part.") Step step, @NotNull @Meaning("Why not.") Reason reason) {}

  /** A reading that could change a verdict. */
  @Meaning("A reading that could change a verdict.")
  public record Reading(
      @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
      @NotNull @Meaning("What to read.") @Size(max = 300) String text,
      @Meaning("Verdicts that change over the range of what it tells.") @Size(max = 60)
          List<Turn> changes) {}

  /**
   * A verdict that a reading could change.
   *
   * @param bed name of the bed, for one of several
   * @param value its value at which the verdict changes
   */
  @Meaning("A verdict that a reading could change.")
  public record Turn(
      @NotNull @Meaning("The part.") Verdict.Component component,
      @Meaning("Name of the bed, for one of several; null otherwise.") @Size(max = 20) String bed,
      @NotNull @Meaning("What the reading tells.") @Size(max = 200) String coefficient,
      @NotNull @Meaning("UCUM code of its value.") @Size(max = 40) String unit,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Its value at which the verdict changes: an end of its range.")
          double value,
      @NotNull @Meaning("The verdict as it stands.") Worth now,
      @NotNull @Meaning("The verdict at that value.") Worth then) {}
}
