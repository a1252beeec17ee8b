package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.decision.Verdict.Component;

/**
 * Work that the plan asks of the household.
 *
 * @param hoursPerYear all of them
 * @param monthlyHours all of them by month
 * @param usefulKWhPerHour useful energy for each hour of work on gas and what feeds it
 * @param yearlyValue what the hours are worth
 */
@Meaning("Work that the plan asks of the household.")
public record WorkEstimate(
    @Meaning("Each task.") @Size(max = 20) List<Task> tasks,
    @Quantity(unit = "h/a", min = 0, max = Quantity.UNBOUNDED, meaning = "Hours of all tasks.")
        double hoursPerYear,
    @TwelveMonths
        @Quantity(
            unit = "h",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Hours of all tasks by month.")
        List<Double> monthlyHours,
    @Quantity(
            unit = "kW.h/h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning =
                "Useful energy of gas and net energy of alcohol for each hour of all work; null"
                    + " without work.")
        Double usefulKWhPerHour,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "What the hours are worth a year, in the currency; null where the plan sets no worth"
                    + " on them.")
        Double yearlyValue) {

  /** One task. */
  @Meaning("One task.")
  public record Task(
      @NotNull @Meaning("Stable name.") @Size(max = 60) String code,
      @NotNull @Meaning("What it is.") @Size(max = 200) String text,
      @Meaning("Part of the plan that asks for it; null for the tank itself.") Component component,
      @Quantity(unit = "h/a", min = 0, max = Quantity.UNBOUNDED, meaning = "Hours in a year.")
          double hoursPerYear,
      @TwelveMonths
          @Quantity(unit = "h", min = 0, max = Quantity.UNBOUNDED, meaning = "Hours by month.")
          List<Double> monthlyHours) {}

  /** Hours a year that a part asks for. */
  public double hoursOf(Component component) {
    return tasks.stream()
        .filter(task -> task.component() == component)
        .mapToDouble(Task::hoursPerYear)
        .sum();
  }
}
