package org.marshlight.ethanol;

import jakarta.validation.constraints.Size;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * Fuel alcohol of a year, the heat it takes and what else the mash would give.
 *
 * @param target what a column needs for fuel strength from this beer
 * @param instead what the same organs would give otherwise
 */
@Meaning("Fuel alcohol of a year, the heat it takes and what else the mash would give.")
public record EthanolEstimate(
    @Meaning("Headline figures.") Annual annual,
    @Meaning("Mash and beer.") MashFigures mash,
    @Meaning("What the still makes.") StillFigures still,
    @Meaning("Where the heat goes and where it comes from.") HeatFigures heat,
    @Meaning("What a column needs for fuel strength from this beer; null without alcohol.")
        Target target,
    @Meaning("What is left.") StillageFigures stillage,
    @Meaning("What the same organs would give otherwise; one or the other, never beside the fuel.")
        Instead instead) {

  /**
   * Headline figures.
   *
   * @param ethanolL pure ethanol in the product, at 20 Cel
   * @param fuelEnergyKWh net heating value of the product as made, its water included
   * @param netEnergyKWh fuel energy less the primary energy of heat and bought electricity
   */
  @Meaning("Headline figures of the fuel alcohol.")
  public record Annual(
      @Quantity(
              unit = "L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Pure ethanol in the product, as volume at 20 Cel.")
          double ethanolL,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat delivered to mash and still.")
          double processHeatKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Net heating value of the product as made, its water included; nought where the"
                      + " water takes more than the alcohol gives.")
          double fuelEnergyKWh,
      @Quantity(
              unit = "kW.h",
              min = -Quantity.UNBOUNDED,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Fuel energy, less the primary energy spent on making it: process heat over the"
                      + " efficiency of its source, and electricity, each at its primary energy"
                      + " factor; the sun counts as nothing spent.")
          double netEnergyKWh) {}

  /**
   * Mash and beer.
   *
   * @param organsDryKg their dry mass
   * @param starchKg starch in them
   * @param sugarKg free sugar in them, as hexose
   * @param addedWaterKg water added
   * @param enzymesKg enzymes bought
   * @param fromMaltFraction share of that sugar that the bought malt brings
   * @param carbonDioxideKg carbon dioxide set free
   * @param beerStrengthPercentVol strength of the beer's liquid
   * @param breakEvenStrengthPercentVol strength at which this plan's net energy is nought
   */
  @Meaning("Mash and beer.")
  public record MashFigures(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Storage organs mashed, as lifted.")
          double organsFreshKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of the organs mashed.")
          double organsDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Starch in the organs mashed.")
          double starchKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Free sugar in the organs mashed, as hexose.")
          double sugarKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water added to the mash.")
          double addedWaterKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Malt bought.")
          double maltKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Enzyme preparations bought.")
          double enzymesKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Dry yeast bought.")
          double yeastKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Sugar that comes into the liquid, as glucose.")
          double glucoseKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of that sugar that the bought malt brings; null without sugar.")
          Double fromMaltFraction,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Ethanol of the beer.")
          double ethanolKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Carbon dioxide set free; heavy, and deadly in closed rooms.")
          double carbonDioxideKg,
      @Quantity(
              unit = "%{vol}",
              min = 0,
              max = 100,
              meaning = "Strength of the beer's liquid; null without alcohol.")
          Double beerStrengthPercentVol,
      @Quantity(unit = "%{vol}", min = 0, max = 100, meaning = "Strength that the yeast bears.")
          double limitPercentVol,
      @Quantity(
              unit = "%{vol}",
              min = 0,
              max = 100,
              meaning =
                  "Strength of beer at which this plan's net energy is nought; null where no"
                      + " strength that the yeast bears is enough.")
          Double breakEvenStrengthPercentVol) {}

  /**
   * What the still makes.
   *
   * @param beerBoilsAtC boiling point of the beer under it
   * @param productStrengthPercentVol its strength
   * @param recoveredFraction ethanol in the product over ethanol in the beer
   * @param lostVapourL pure ethanol lost to the air
   * @param heatingValueMJL net heating value of a litre of the product
   * @param flashPointC temperature at which the vapour over the product can be lit
   * @param firstRunStrengthPercentVol strength of what a pot's first run gives to its second
   * @param firstRunFlashPointC temperature at which the vapour over that can be lit
   */
  @Meaning("What the still makes.")
  public record StillFigures(
      @Meaning("Pot or column.") StillKind kind,
      @Quantity(unit = "kPa", min = 40, max = 110, meaning = "Pressure of the air at the site.")
          double airPressureKPa,
      @Quantity(
              unit = "Cel",
              min = 60,
              max = 105,
              meaning = "Boiling point of the beer under it; null without alcohol.")
          Double beerBoilsAtC,
      @Quantity(
              unit = "L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Product as made, at 20 Cel.")
          double productL,
      @Quantity(
              unit = "%{vol}",
              min = 0,
              max = 100,
              meaning = "Strength of the product; null if there is none.")
          Double productStrengthPercentVol,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Ethanol in the product over ethanol in the beer; null without alcohol.")
          Double recoveredFraction,
      @Quantity(
              unit = "L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Pure ethanol lost to the air as vapour.")
          double lostVapourL,
      @Quantity(
              unit = "MJ/L",
              min = -3,
              max = 25,
              meaning = "Net heating value of a litre of the product; null if there is none.")
          Double heatingValueMJL,
      @Quantity(
              unit = "Cel",
              min = -10,
              max = 100,
              meaning =
                  "Temperature at which the vapour over the product can be lit; null if there is"
                      + " no product of at least 2 % vol.")
          Double flashPointC,
      @Quantity(
              unit = "%{vol}",
              min = 0,
              max = 100,
              meaning =
                  "Strength of what a pot's first run gives to its second; null without a second.")
          Double firstRunStrengthPercentVol,
      @Quantity(
              unit = "Cel",
              min = -10,
              max = 100,
              meaning =
                  "Temperature at which the vapour over that can be lit; null if it is weaker than"
                      + " 2 % vol.")
          Double firstRunFlashPointC) {}

  /**
   * Where the heat goes and where it comes from.
   *
   * @param mashReusedKWh part of it that warms the next mash
   * @param recoveredKWh part of it that the stillage gives back
   * @param boilUpKWh heat of the vapour, reflux included
   * @param source id of the fuel
   * @param sourceEnergyKWh energy of the fuel
   * @param cutOrBoughtKWh part of it that is cut or bought
   * @param ownGasOrSunKWh part of it that is the plan's own gas or sun
   * @param sourceKg mass of the fuel
   * @param sourceL volume of the fuel
   * @param heatPerLitreMJL process heat for each litre of pure ethanol
   * @param primaryEnergyKWh primary energy of source and electricity
   * @param energyRatio fuel energy over that
   */
  @Meaning("Where the heat goes and where it comes from.")
  public record HeatFigures(
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat that cooks the mash.")
          double mashKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Part of the mash's heat that warms the next mash.")
          double mashReusedKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat that brings the beer to the boil.")
          double feedKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Part of the feed's heat that the stillage gives back.")
          double recoveredKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat of the vapour that rises in the still, reflux included.")
          double boilUpKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Part of the boil-up that goes into reflux.")
          double refluxKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Heat lost from the vessels.")
          double vesselLossKWh,
      @Meaning("Id of the fuel that gives the heat.") @Size(max = 60) String source,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Heat delivered over the fuel's net heating value.")
          double sourceEfficiency,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Net heating value of the fuel burnt under mash and still.")
          double sourceEnergyKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Part of the source's energy that is cut or bought.")
          double cutOrBoughtKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Part of the source's energy that is the plan's own gas or the sun.")
          double ownGasOrSunKWh,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mass of the fuel burnt; null where it has none.")
          Double sourceKg,
      @Quantity(
              unit = "L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Volume of the fuel burnt; null where it is not liquid.")
          Double sourceL,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Electricity bought for chopping and pumping.")
          double electricityKWh,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Primary energy spent: fuel at its net heating value, the plan's own gas too;"
                      + " electricity with what making it takes; the sun not at all.")
          double primaryEnergyKWh,
      @Quantity(
              unit = "MJ/L",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Process heat for each litre of pure ethanol; null without alcohol.")
          Double heatPerLitreMJL,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Fuel energy over the primary energy spent; null where nothing is spent.")
          Double energyRatio) {}

  /**
   * What a column needs for a strength from this beer.
   *
   * @param strengthPercentVol the strength: the plan's own, else that of a usual fuel
   * @param leastRefluxRatio reflux below which no number of plates is enough
   * @param platesAtReflux theoretical plates at the plan's reflux ratio
   */
  @Meaning("What a column needs for a strength from this beer.")
  public record Target(
      @Quantity(
              unit = "%{vol}",
              min = 0,
              max = 100,
              meaning = "The strength asked for: the plan's own, else that of a usual fuel.")
          double strengthPercentVol,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Reflux ratio below which no number of plates is enough.")
          double leastRefluxRatio,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Theoretical plates at total reflux, reboiler not counted.")
          double leastPlates,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Theoretical plates at the plan's reflux ratio, reboiler not counted; null where"
                      + " that ratio is too low.")
          Double platesAtReflux) {}

  /**
   * What is left.
   *
   * @param freshKg its mass
   * @param volumeL its volume
   * @param totalSolidsFraction its dry share
   * @param codKg its chemical oxygen demand
   * @param nitrogenKg its nitrogen
   * @param phosphorusKg its phosphorus
   * @param potassiumKg its potassium
   * @param perLitreOfEthanol its volume over that of the ethanol made
   */
  @Meaning("What the still leaves; it holds all minerals of the harvest that was mashed.")
  public record StillageFigures(
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Mass of the stillage.")
          double freshKg,
      @Quantity(unit = "L", min = 0, max = Quantity.UNBOUNDED, meaning = "Volume of the stillage.")
          double volumeL,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Dry share of its mass, alcohol counted as dry; null if there is none.")
          Double totalSolidsFraction,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Chemical oxygen demand.")
          double codKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Nitrogen.")
          double nitrogenKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Phosphorus.")
          double phosphorusKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium.")
          double potassiumKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Alcohol left in it.")
          double ethanolKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its volume over that of the pure ethanol made; null without alcohol.")
          Double perLitreOfEthanol) {}

  /**
   * What the same organs would give otherwise.
   *
   * @param methaneNm3 methane if they went to the tank
   * @param methaneEnergyKWh its net heating value
   * @param compostDryKg dry compost if they went to the heap
   */
  @Meaning("What the same organs would give otherwise.")
  public record Instead(
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Methane at 0 Cel and 101.325 kPa if the organs went to the tank and time and"
                      + " warmth sufficed.")
          double methaneNm3,
      @Quantity(
              unit = "kW.h",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Net heating value of that methane.")
          double methaneEnergyKWh,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry compost if the organs went to the heap.")
          double compostDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen of that compost.")
          double compostNitrogenKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus of that compost.")
          double compostPhosphorusKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium of that compost.")
          double compostPotassiumKg) {}
}
