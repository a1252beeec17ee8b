package org.marshlight.digester;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;

/**
 * What the tank does in a year: means over the years between two desludgings.
 *
 * @param heatFlowsKWh heat into liquor, lid and glazing by month
 * @param storedHeatChangeKWh change of what they hold; the sum of the flows
 * @param gas composition and uses
 * @param startUp first years of a cold tank
 * @param tankHeating warming with surplus gas
 */
@Meaning("What the tank does in a year: means over the years between two desludgings.")
public record DigesterEstimate(
    @Meaning("By month.") Monthly monthly,
    @Meaning("Over the year.") Annual annual,
    @Meaning("Heat into liquor, lid and glazing by month, kWh, positive inwards.")
        HeatFlows heatFlowsKWh,
    @TwelveMonths
        @Quantity(
            unit = "kW.h",
            min = -Quantity.UNBOUNDED,
            max = Quantity.UNBOUNDED,
            meaning = "Change of what liquor and lid hold; the sum of the flows.")
        List<Double> storedHeatChangeKWh,
    @Meaning("What enters.") Load load,
    @Meaning("Composition and uses of the gas.") Gas gas,
    @Meaning("What leaves for the beds.") Effluent effluent,
    @Meaning("What settles.") Sludge sludge,
    @Meaning("Checks against failure.") @Size(max = 20) List<Check> stability,
    @Meaning("Each year between two desludgings.") @Size(max = 20) List<CycleYear> cycle,
    @Meaning("Independent estimates.") @Size(max = 10) List<SecondOpinion> secondOpinions,
    @Meaning("First three years of a cold tank; null where not asked for.") StartUp startUp,
    @Meaning("Warming of the tank with surplus gas; null where there is none.")
        TankHeating tankHeating) {

  /** A surface or liquid above this scalds, Cel. */
  public static final double SCALD_C = 49;

  /** Figures by month. */
  @Meaning("Figures of the tank by month.")
  public record Monthly(
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the liquor.")
          List<Double> liquorTemperatureC,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the air.")
          List<Double> ambientTemperatureC,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the lid.")
          List<Double> lidTemperatureC,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the surface that meets the weather: glass, or soil.")
          List<Double> surfaceTemperatureC,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Sun that falls on the glass, or on a bare lid; nought under earth.")
          List<Double> sunOnTopKWh,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Heat that passes from the lid down to the liquor.")
          List<Double> lidToLiquorKWh,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane formed, dry at 0 Cel and 101.325 kPa.")
          List<Double> methaneProducedNm3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane that leaves dissolved in the outflow.")
          List<Double> methaneDissolvedNm3,
      @TwelveMonths
          @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Methane that leaks.")
          List<Double> methaneLeakedNm3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane that reaches the store, after dissolved loss and leak.")
          List<Double> methaneNm3,
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Gas as a meter at the store would read it: wet, at its state.")
          List<Double> meteredGasM3,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Net heating value of the methane that reaches the store.")
          List<Double> gasEnergyKWh,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Gas burned by all uses.")
          List<Double> gasUsedKWh,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Gas that the store could not hold: flared or vented.")
          List<Double> gasSurplusKWh,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Gas that the uses asked for and did not get.")
          List<Double> gasShortfallKWh,
      @TwelveMonths
          @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the cooking demand met; null where nothing is cooked on gas.")
          List<Double> cookingDemandMetFraction) {}

  /** Figures over the year. */
  @Meaning("Figures of the tank over the year.")
  public record Annual(
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the liquor.")
          double meanLiquorTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Lowest hourly liquor temperature.")
          double lowestLiquorTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Highest hourly liquor temperature.")
          double highestLiquorTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Highest hourly lid temperature.")
          double highestLidTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Lowest hourly temperature of the surface that meets the weather.")
          double lowestSurfaceTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Highest hourly temperature of the surface that meets the weather.")
          double highestSurfaceTemperatureC,
      @Quantity(unit = "h", min = 0, max = 8760, meaning = "Hours in which the lid can scald.")
          double lidAboveScaldHours,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning =
                  "Heat that the lid passes down over the sun that falls on the top; null where no"
                      + " sun falls.")
          Double utilisedSunFraction,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Lid under full sun with the tank empty; null where there is no glass.")
          Double stagnationTemperatureC,
      @Quantity(
              unit = "W/K",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Steady loss to the ground for each kelvin above its surface.")
          double groundLossWK,
      @Quantity(
              unit = "W/K",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "The same by ISO 13370, which falls short for small pits.")
          double standardGroundLossWK,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Methane formed.")
          double methaneProducedNm3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane that leaves dissolved.")
          double methaneDissolvedNm3,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Methane that leaks.")
          double methaneLeakedNm3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane that reaches the store, after dissolved loss and leak.")
          double methaneNm3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane if all COD fed were turned to it: 0.35 m3 for each kg.")
          double methaneCeilingNm3,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Net heating value of the methane that reaches the store.")
          double gasEnergyKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Gas burned by all uses.")
          double gasUsedKWh,
      @Quantity(
              unit = "g/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Gas-phase methane before leak from people's own load, a person and day at home;"
                      + " null with no people.")
          Double methaneGPerPersonDay,
      @Quantity(
              unit = "g/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Gas-phase methane before leak from everything fed, a person and day at home;"
                      + " null with no people.")
          Double methaneTotalGPerPersonDay,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the cooking demand met; null where nothing is cooked on gas.")
          Double cookingDemandMetFraction,
      @Quantity(
              unit = "h/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Hours a day that the gas would keep one cooking burner alight.")
          double burnerHoursPerDay,
      @Quantity(
              unit = "d",
              min = 0,
              max = 7300,
              meaning = "Longest run of days on which some use got no gas.")
          int longestWithoutGasDays,
      @Quantity(
              unit = "d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Liquid volume over daily inflow; null with no inflow.")
          Double hydraulicRetentionDays,
      @Quantity(
              unit = "kg/(m3.d)",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Organic solids fed for each m3 of liquid and day.")
          double organicLoadingKgM3Day) {}

  /** Heat flows by month. */
  @Meaning("Heat into liquor, lid and glazing by month, kWh, positive inwards.")
  public record HeatFlows(
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Sun taken up.")
          List<Double> absorbedSun,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "From the top to the air.")
          List<Double> topToAir,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "From the top to the sky.")
          List<Double> topToSky,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Through back and sides under the glass.")
          List<Double> enclosure,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Through soil over the lid.")
          List<Double> coverSoil,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Through walls and floor.")
          List<Double> ground,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Brought by the inflow over what the outflow takes.")
          List<Double> inflow,
      @TwelveMonths
          @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Given by burned surplus gas.")
          List<Double> burnedGas) {}

  /** What enters. */
  @Meaning("What enters the tank, mean day of the year.")
  public record Load(
      @Quantity(unit = "L/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Water.")
          double waterLPerDay,
      @Quantity(unit = "kg/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Dry mass.")
          double totalSolidsKgPerDay,
      @Quantity(unit = "kg/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Organic dry mass.")
          double volatileSolidsKgPerDay,
      @Quantity(
              unit = "kg/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Chemical oxygen demand.")
          double codKgPerDay,
      @Quantity(
              unit = "kg/d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Five-day oxygen demand.")
          double bod5KgPerDay,
      @Quantity(unit = "kg/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Nitrogen.")
          double nitrogenKgPerDay,
      @Quantity(unit = "kg/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Phosphorus.")
          double phosphorusKgPerDay,
      @Quantity(unit = "kg/d", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium.")
          double potassiumKgPerDay,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the COD that people bring; null with no load.")
          Double peopleCodFraction) {}

  /** Composition and uses of the gas. */
  @Meaning("Composition and uses of the gas.")
  public record Gas(
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Methane in methane and carbon dioxide; null where there is no gas.")
          Double methaneFraction,
      @Quantity(
              unit = "[ppm]",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Hydrogen sulphide by volume; null where there is no gas.")
          Double hydrogenSulphidePpm,
      @Quantity(
              unit = "[ppm]",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Hydrogen sulphide at the low end of its coefficients.")
          Double hydrogenSulphideLowPpm,
      @Quantity(
              unit = "[ppm]",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Hydrogen sulphide at the high end of its coefficients.")
          Double hydrogenSulphideHighPpm,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane that a full store holds in the mean month.")
          double storeHoldsNm3,
      @Meaning("What becomes of gas that the store cannot hold.") GasSurplus surplus,
      @Meaning("Each use in the order in which it is served.") @Size(max = 8) List<Use> uses) {}

  /** One use of the gas. */
  @Meaning("One use of the gas over the year.")
  public record Use(
      @Meaning("What it is.") GasPurpose use,
      @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Gas asked for.")
          double demandKWh,
      @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Gas burned.")
          double usedKWh,
      @TwelveMonths
          @Quantity(unit = "1", min = 0, max = 1, meaning = "Share met; null without demand.")
          List<Double> metFraction) {}

  /** What leaves for the beds. */
  @Meaning("What leaves for the beds, by month; concentrations are null without outflow.")
  public record Effluent(
      @TwelveMonths
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Outflow in the month.")
          List<Double> volumeM3,
      @TwelveMonths
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Temperature.")
          List<Double> temperatureC,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Five-day oxygen demand.")
          List<Double> bod5MgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Chemical oxygen demand.")
          List<Double> codMgL,
      @TwelveMonths
          @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Suspended solids.")
          List<Double> suspendedSolidsMgL,
      @TwelveMonths
          @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Total nitrogen.")
          List<Double> totalNitrogenMgL,
      @TwelveMonths
          @Quantity(
              unit = "mg/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Ammonium nitrogen.")
          List<Double> ammoniumNitrogenMgL,
      @TwelveMonths
          @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Total phosphorus.")
          List<Double> totalPhosphorusMgL,
      @TwelveMonths
          @Quantity(unit = "mg/L", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium.")
          List<Double> potassiumMgL,
      @Quantity(
              unit = "{CFU}/dL",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Faecal coliforms in 100 mL, taken for every month.")
          double faecalColiformsPer100ML) {}

  /** What settles. */
  @Meaning("What settles and is pumped.")
  public record Sludge(
      @Quantity(unit = "a", min = 1, max = 20, meaning = "Whole years between desludgings.")
          int intervalYears,
      @Quantity(unit = "m3", min = 0, max = 500, meaning = "Sludge just before it is pumped.")
          double greatestVolumeM3,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest sludge volume over liquid volume.")
          double greatestFillFraction,
      @Quantity(
              unit = "d/a",
              min = 0,
              max = 365,
              meaning = "Days a year on which sludge fills all it may and solids leave instead.")
          double overfullDaysPerYear,
      @Quantity(
              unit = "kg/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry solids pumped, mean year.")
          double pumpedDryKgPerYear,
      @Quantity(
              unit = "m3/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Volume pumped, mean year.")
          double pumpedM3PerYear,
      @Quantity(
              unit = "kg/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen pumped, mean year.")
          double pumpedNitrogenKgPerYear,
      @Quantity(
              unit = "kg/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus pumped, mean year.")
          double pumpedPhosphorusKgPerYear,
      @Quantity(
              unit = "kg/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium pumped, mean year.")
          double pumpedPotassiumKgPerYear,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Sludge and scum that measured tanks gathered in such an interval from as many"
                      + " people; null without people.")
          Double measuredTanksM3,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Liquid volume that a public rule of sizing asks for; null without people.")
          Double volumeByRuleM3) {}

  /** One check against failure. */
  @Meaning("One check against failure of the tank.")
  public record Check(
      @Meaning("Stable name of the check.") @Size(max = 60) String code,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Worst value of the year; null where there is nothing to check.")
          Double value,
      @Quantity(
              unit = Quantity.UNIT_BESIDE,
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Limit it is held against.")
          double limit,
      @Meaning("UCUM code of value and limit.") @Size(max = 40) String unit,
      @Quantity(unit = "1", min = 1, max = 12, meaning = "Month of the worst value.") int month,
      @Meaning("Whether the limit is kept.") boolean kept,
      @Meaning("The check in words.") @Size(max = 500) String text) {}

  /** One year between two desludgings. */
  @Meaning("One year between two desludgings.")
  public record CycleYear(
      @Quantity(unit = "1", min = 1, max = 20, meaning = "Year after desludging.") int year,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Methane formed.")
          double methaneProducedNm3,
      @Quantity(unit = "m3", min = 0, max = 500, meaning = "Sludge at the year's end.")
          double sludgeM3) {}

  /** An independent estimate. */
  @Meaning("An independent estimate of the year's methane, beside the model's own.")
  public record SecondOpinion(
      @Meaning("Stable name of the method.") @Size(max = 60) String code,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane in the year; null where the method does not hold.")
          Double methaneNm3,
      @Meaning("What the method is and where it holds.") @Size(max = 500) String text,
      @Meaning("Id of the source.") @Size(max = 100) String source) {}

  /** First years of a cold tank. */
  @Meaning("First three years of a tank that is filled cold, in ground that is not yet warmed.")
  public record StartUp(
      @Quantity(unit = "1", min = 1, max = 12, meaning = "Month of filling, 1 = January.")
          int month,
      @Size(min = 36, max = 36)
          @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Mean temperature of the liquor in each month from filling on.")
          List<Double> liquorTemperatureC,
      @Size(min = 36, max = 36)
          @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Methane formed in each month from filling on.")
          List<Double> methaneProducedNm3) {}

  /** Warming of the tank with surplus gas. */
  @Meaning("Warming of the tank with surplus gas, against leaving it and against insulation.")
  public record TankHeating(
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Surplus gas burned for it a year.")
          double gasBurnedKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat that reached the liquor.")
          double heatKWh,
      @Quantity(
              unit = "K",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Mean liquor temperature over that with the surplus left.")
          double warmerK,
      @Quantity(
              unit = "m3",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Methane at the store over that with the surplus left.")
          double methaneGainNm3,
      @Quantity(
              unit = "m2.K/W",
              min = 0,
              max = 10,
              meaning = "Insulation round walls and floor that is compared.")
          double insulationM2KW,
      @Quantity(
              unit = "K",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Mean liquor temperature with that insulation instead, over without.")
          double insulationWarmerK,
      @Quantity(
              unit = "m3",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning = "Methane at the store with that insulation instead, over without.")
          double insulationMethaneGainNm3) {}
}
