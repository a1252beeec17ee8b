package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.economy.BaselineDesign;

/**
 * Greenhouse gases of the household with its present system against the plan, a year.
 *
 * @param displacedFuel the fuel that the gas takes the place of
 * @param difference the plan less the present system
 * @param breakEvenLeak100 share of the gas at which the plan would do the climate no good, over a
 *     hundred years
 * @param simpleBreakEvenLeak100 the same for gas that was not there before, over a hundred years
 */
@Meaning("Greenhouse gases of the household with its present system against the plan, a year.")
public record GreenhouseGasEstimate(
    @NotNull @Meaning("What the household's wastewater does without the plan.")
        BaselineDesign.Sewage sewageWithout,
    @NotNull
        @Meaning(
            "The fuel that the gas takes the place of; its factor is for net heating value, like"
                + " all energies here.")
        @Size(max = 60)
        String displacedFuel,
    @Meaning("What gives off what.") @Size(max = 60) List<Line> lines,
    @NotNull @Meaning("All lines without the plan.") Weight present,
    @NotNull @Meaning("All lines of the plan.") Weight plan,
    @NotNull @Meaning("The plan less the present system; below nought is a gain for the climate.")
        Weight difference,
    @Quantity(unit = "1", min = 0, max = 1, meaning = "Share of the gas that leaks in the plan.")
        double leakFraction,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1,
            meaning =
                "Share of the gas that may leak until the plan is no better than the present"
                    + " system, over a hundred years; null where no share from 0 to 1 is.")
        Double breakEvenLeak100,
    @Quantity(unit = "1", min = 0, max = 1, meaning = "The same over twenty years.")
        Double breakEvenLeak20,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1,
            meaning =
                "Share that may leak of gas that would not have been made without the plan, over a"
                    + " hundred years.")
        double simpleBreakEvenLeak100,
    @Quantity(unit = "1", min = 0, max = 1, meaning = "The same over twenty years.")
        double simpleBreakEvenLeak20) {

  /** On which side of the comparison a line stands. */
  public enum Side {
    PRESENT,
    PLAN
  }

  /**
   * What one thing gives off in a year.
   *
   * @param weight all together
   */
  @Meaning("What one thing gives off in a year.")
  public record Line(
      @NotNull @Meaning("With the plan or without.") Side side,
      @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
      @NotNull @Meaning("What it is.") @Size(max = 300) String text,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Fossil carbon dioxide.")
          double carbonDioxideKg,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Methane.")
          double methaneKg,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrous oxide.")
          double nitrousOxideKg,
      @NotNull @Meaning("All together, as carbon dioxide.") Weight weight) {}

  /** Gases as the carbon dioxide that warms as much. */
  @Meaning("Gases as the carbon dioxide that warms as much.")
  public record Weight(
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Over a hundred years.")
          double over100YearsKg,
      @Quantity(
              unit = "kg",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Over twenty years.")
          double over20YearsKg) {

    /** Nothing. */
    public static final Weight NONE = new Weight(0, 0);

    Weight plus(Weight other) {
      return new Weight(over100YearsKg + other.over100YearsKg, over20YearsKg + other.over20YearsKg);
    }

    Weight minus(Weight other) {
      return new Weight(over100YearsKg - other.over100YearsKg, over20YearsKg - other.over20YearsKg);
    }

    Weight times(double factor) {
      return new Weight(over100YearsKg * factor, over20YearsKg * factor);
    }
  }
}
