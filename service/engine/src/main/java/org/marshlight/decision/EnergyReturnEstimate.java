package org.marshlight.decision;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.economy.PlanPart;

/**
 * Energy returned on energy spent, a year. What running takes is primary energy, as in the figures
 * of the still. Heat of the sun, heat that the still recovers within itself and people's work do
 * not count as spent; the tank's concrete, which is there in any case, is left out.
 *
 * @param operationKWh primary energy of fuel, gas and electricity that running takes
 * @param operationRatio returned over what running takes
 * @param ratio returned over all that is spent
 * @param paybackYears years until what is returned beyond running has made up for building
 */
@Meaning(
    "Energy returned on primary energy spent, a year; sun, recovered heat and people's work do not"
        + " count as spent.")
public record EnergyReturnEstimate(
    @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Useful energy of gas.")
        double gasKWh,
    @Quantity(
            unit = "kW.h",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Net heating value of fuel alcohol.")
        double alcoholKWh,
    @Quantity(
            unit = "kW.h",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "Primary energy that running takes: fuel and gas at net heating value, electricity"
                    + " with what making it takes.")
        double operationKWh,
    @Quantity(
            unit = "kW.h/a",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Energy of making what is built, spread over its life.")
        double embodiedKWhPerYear,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Returned over what running takes; null where running takes nothing.")
        Double operationRatio,
    @Quantity(
            unit = "1",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning = "Returned over all that is spent; null where nothing is.")
        Double ratio,
    @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Returned less all that is spent.")
        double netKWh,
    @Quantity(
            unit = "a",
            min = 0,
            max = Quantity.UNBOUNDED,
            meaning =
                "Years until what is returned beyond running has made up for building; null where"
                    + " it never does.")
        Double paybackYears,
    @Meaning("Energy of making each part.") @Size(max = 6) List<Embodied> parts) {

  /** Energy of making one part. */
  @Meaning("Energy of making one part.")
  public record Embodied(
      @NotNull @Meaning("The part.") PlanPart part,
      @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Energy of making it.")
          double embodiedKWh) {}

  static EnergyReturnEstimate of(Effects with, List<MaterialNeeded> materials, double lifeYears) {
    double alcohol = 0;
    double operation = 0;
    if (with.run().ethanol() != null) {
      var ethanol = with.run().ethanol().estimate();
      alcohol = ethanol.annual().fuelEnergyKWh();
      operation = ethanol.heat().primaryEnergyKWh();
    }
    List<Embodied> parts = new java.util.ArrayList<>();
    double embodied = 0;
    for (PlanPart part : PlanPart.values()) {
      double kWh =
          materials.stream()
              .filter(material -> material.part() == part)
              .mapToDouble(MaterialNeeded::embodiedKWh)
              .sum();
      embodied += kWh;
      if (kWh > 0) {
        parts.add(new Embodied(part, kWh));
      }
    }
    double gas = with.service().annualUsefulKWh();
    double perYear = embodied / lifeYears;
    double returned = gas + alcohol;
    double spent = operation + perYear;
    return new EnergyReturnEstimate(
        gas,
        alcohol,
        operation,
        perYear,
        operation > 0 ? returned / operation : null,
        spent > 0 ? returned / spent : null,
        returned - spent,
        returned > operation ? embodied / (returned - operation) : null,
        List.copyOf(parts));
  }
}
