package org.marshlight.economy;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.Usual;
import org.marshlight.ethanol.HeatSource;

/**
 * What things cost; without it the verdict rests on energy.
 *
 * @param currency ISO 4217 code
 * @param capital cost of building each part
 * @param yearlyCare money spent on upkeep a year
 * @param displacedFuel id of the fuel that the gas takes the place of in cooking and hot water
 * @param fuelPricePerKWh price of the displaced fuel per kWh of net heating value delivered
 * @param lifeYears years over which the plant is judged
 * @param discountRate real discount rate a year
 * @param fuelPriceGrowth real growth of fuel prices a year
 * @param electricityPricePerKWh price of electricity
 * @param stillFuelPricePerKWh price of the fuel that heats mash and still
 * @param alcoholPricePerKWh worth of a kWh of fuel alcohol
 * @param currencyPerDollar units of the currency for one United States dollar
 * @param hourValue worth of an hour of the household's work
 * @param budget money at hand for building
 * @param owned parts that already stand
 * @param waterHeaterPerM2 cost of a square metre of solar water heater
 * @param modulePerM2 cost of a square metre of photovoltaic module
 */
@Meaning("What things cost; without it the verdict rests on energy.")
public record MoneyDesign(
    @Meaning("ISO 4217 code of the currency; unnamed units if not given.")
        @Pattern(regexp = "[A-Z]{3}")
        @Size(max = 3)
        String currency,
    @Valid
        @Meaning(
            "Cost of building each part; parts without a cost are judged by energy or by what they"
                + " do.")
        CapitalDesign capital,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1e9,
            meaning =
                "Money spent on upkeep a year, in the currency; shared among the parts as their"
                    + " costs; none if not given.")
        Double yearlyCare,
    @Meaning(
            "Id of the fuel that the gas takes the place of in cooking and hot water; lamps and"
                + " engines take the place of electricity.")
        @CatalogueId("fuels")
        @Usual("lpg")
        @Size(max = 60)
        String displacedFuel,
    @Quantity(
            unit = "1/(kW.h)",
            min = 0,
            max = 1e6,
            meaning =
                "Price of the displaced fuel per kWh of net heating value delivered; not given,"
                    + " energy is not counted in money.")
        Double fuelPricePerKWh,
    @Quantity(
            unit = "a",
            min = 1,
            max = 60,
            meaning = "Years over which the plant is judged; no part of it lasts longer than 60.",
            reason = "no part of such a plant lasts longer than 60 years",
            usual = "economy.default.life")
        Double lifeYears,
    @Quantity(
            unit = "1",
            min = -0.05,
            max = 1,
            meaning =
                "Real discount rate a year, as a fraction, inflation taken off: real interest has"
                    + " not stayed below -0.05 for the life of a plant, and whoever asks for more"
                    + " than 1 wants all money back within a year.",
            reason =
                "this is the rate after inflation as a fraction, 0.05 for 5 percent; it has not"
                    + " stayed below -0.05 for the life of a plant, and above 1 all money would"
                    + " have to come back within a year",
            usual = "economy.default.discount-rate")
        Double discountRate,
    @Quantity(
            unit = "1",
            min = -0.1,
            max = 0.1,
            meaning =
                "Growth of fuel prices a year beyond that of other prices, as a fraction; no fuel"
                    + " has become more expensive or cheaper by more than 0.1 a year for the life of a"
                    + " plant.",
            reason =
                "this is the growth beyond that of other prices as a fraction, 0.03 for 3 percent;"
                    + " no fuel has become more expensive or cheaper by more than a tenth a year for the"
                    + " life of a plant",
            usual = "economy.default.fuel-price-growth")
        Double fuelPriceGrowth,
    @Quantity(
            unit = "1/(kW.h)",
            min = 0,
            max = 1e6,
            meaning =
                "Price of electricity, which lamps and engines take the place of; that of the"
                    + " displaced fuel where it is electricity; not given, electricity is not"
                    + " counted in money.")
        Double electricityPricePerKWh,
    @Quantity(
            unit = "1/(kW.h)",
            min = 0,
            max = 1e6,
            meaning =
                "Price per kWh of net heating value of the fuel that heats mash and still; that of"
                    + " electricity where it is electricity; not given, that fuel costs no money.")
        Double stillFuelPricePerKWh,
    @Quantity(
            unit = "1/(kW.h)",
            min = 0,
            max = 1e6,
            meaning =
                "Worth per kWh of net heating value of the fuel alcohol; if not given, the price of"
                    + " the displaced fuel that brings the same heat into a pot.")
        Double alcoholPricePerKWh,
    @Quantity(
            unit = "1",
            min = 1e-6,
            max = 1e9,
            meaning =
                "Units of the currency for one United States dollar, in which fertiliser is priced;"
                    + " 1 for USD; not given, fertiliser is not counted in money.")
        Double currencyPerDollar,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1e6,
            meaning =
                "Worth of an hour of the household's work, in the currency; not given, work costs"
                    + " no money.")
        Double hourValue,
    @Quantity(
            unit = "1",
            min = 0,
            max = 1e9,
            meaning = "Money at hand for building, in the currency; no limit if not given.")
        Double budget,
    @Size(max = 6) @Meaning("Parts that already stand: their cost is sunk; none if not given.")
        List<@NotNull PlanPart> owned,
    @Quantity(
            unit = "1/m2",
            min = 0.001,
            max = 1e6,
            meaning =
                "Cost of a square metre of solar water heater, for what the money of the glass would"
                    + " buy; not compared by money if not given.")
        Double waterHeaterPerM2,
    @Quantity(
            unit = "1/m2",
            min = 0.001,
            max = 1e6,
            meaning =
                "Cost of a square metre of photovoltaic module with its inverter, likewise; not"
                    + " compared by money if not given.")
        Double modulePerM2) {

  /** Nothing said of money. */
  public static final MoneyDesign NOTHING =
      new MoneyDesign(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null);

  /** Whether a part already stands. */
  public boolean owns(PlanPart part) {
    return owned != null && owned.contains(part);
  }

  /** What is still to be paid for a part; null if its cost is not given. */
  public Double toPay(PlanPart part) {
    if (owns(part)) {
      return 0.0;
    }
    return capital == null ? null : capital.of(part);
  }

  /**
   * Price of electricity; that of the displaced fuel where it is electricity, and null if neither
   * is given.
   */
  public Double electricityPrice() {
    return electricityPricePerKWh == null && HeatSource.ELECTRICITY.equals(displacedFuel)
        ? fuelPricePerKWh
        : electricityPricePerKWh;
  }

  /** Units of the currency for one United States dollar; null if not known. */
  public Double perDollar() {
    return currencyPerDollar == null && "USD".equals(currency)
        ? Double.valueOf(1)
        : currencyPerDollar;
  }
}
