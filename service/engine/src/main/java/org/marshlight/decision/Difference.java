package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Months;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;
import org.marshlight.economy.AppraisalEstimate;

/**
 * The plan with a part less the same plan without it, a year.
 *
 * @param monthlyUsefulEnergyKWh the same by month
 * @param displacedFuelKWh fuel that is burned less for it
 * @param displacedElectricityKWh electricity that is used less for it
 * @param outflowBod5Kg oxygen demand that leaves with the water
 * @param unfitMonths months in which the water breaks a limit of its use
 * @param gases greenhouse gases, with what is spared elsewhere
 * @param workHoursPerYear hours of work
 * @param money what the part comes to in money
 * @param hazards ids of the cautions that it brings
 */
@Meaning("The plan with a part less the same plan without it, a year.")
public record Difference(
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Useful heat, light and work of burned gas.")
        double usefulEnergyKWh,
    @TwelveMonths
        @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Useful heat, light and work of burned gas, by month.")
        List<Double> monthlyUsefulEnergyKWh,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Fuel that is burned less for it, at net heating value.")
        double displacedFuelKWh,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning =
                "Electricity that is used less for it: what electric lamps would take for the same"
                    + " light, and what the generators of engines give.")
        double displacedElectricityKWh,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Energy of fuel alcohol less what its making takes.")
        double alcoholNetKWh,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Five-day oxygen demand that leaves with the water.")
        double outflowBod5Kg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Nitrogen that leaves with the water.")
        double outflowNitrogenKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Phosphorus that leaves with the water.")
        double outflowPhosphorusKg,
    @Quantity(
            unit = "1",
            min = -12,
            max = 12,
            meaning =
                "Months in which the water breaks a limit of its use; null where either plan has no"
                    + " beds.")
        Integer unfitMonths,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Nitrogen that comes back to land.")
        double landNitrogenKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Phosphorus that comes back to land.")
        double landPhosphorusKg,
    @Quantity(
            unit = "kg",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Potassium that comes back to land.")
        double landPotassiumKg,
    @NotNull @Meaning("Greenhouse gases, with what is spared elsewhere; below nought is a gain.")
        GreenhouseGasEstimate.Weight gases,
    @Quantity(unit = "h/a", min = 0, max = Quantity.UNBOUNDED, meaning = "Work of the household.")
        double workHoursPerYear,
    @Meaning("What the part comes to in money; null where its cost or a price is not given.")
        AppraisalEstimate money,
    @Meaning("Ids of the cautions that the part brings.") @Size(max = 20) List<String> hazards) {

  static Difference of(
      Effects with,
      Effects without,
      double workHours,
      AppraisalEstimate money,
      List<String> hazards) {
    double[] monthly = new double[Months.COUNT];
    for (int month = 0; month < Months.COUNT; month++) {
      monthly[month] = with.service().usefulKWh()[month] - without.service().usefulKWh()[month];
    }
    return new Difference(
        with.service().annualUsefulKWh() - without.service().annualUsefulKWh(),
        Months.list(monthly),
        with.service().annualDisplacedFuelKWh() - without.service().annualDisplacedFuelKWh(),
        with.service().annualDisplacedElectricityKWh()
            - without.service().annualDisplacedElectricityKWh(),
        alcoholNetKWh(with) - alcoholNetKWh(without),
        with.outflowBod5Kg() - without.outflowBod5Kg(),
        with.outflow().nitrogenKg() - without.outflow().nitrogenKg(),
        with.outflow().phosphorusKg() - without.outflow().phosphorusKg(),
        with.unfitMonths() == null || without.unfitMonths() == null
            ? null
            : with.unfitMonths() - without.unfitMonths(),
        with.land().nitrogenKg() - without.land().nitrogenKg(),
        with.land().phosphorusKg() - without.land().phosphorusKg(),
        with.land().potassiumKg() - without.land().potassiumKg(),
        with.gases().minus(without.gases()),
        workHours,
        money,
        hazards);
  }

  private static double alcoholNetKWh(Effects effects) {
    return effects.run().ethanol() == null
        ? 0
        : effects.run().ethanol().estimate().annual().netEnergyKWh();
  }
}
