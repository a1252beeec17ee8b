package org.marshlight.compost;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/** Compost of a year: the mix, what it loses, how hot it gets and what it gives back to land. */
@Meaning("Compost of a year: the mix, its losses, its heat and what it gives back to land.")
public record CompostEstimate(
    @Meaning("Headline figures.") Annual annual,
    @Meaning("The materials put together.") MixFigures mix,
    @Meaning("What to add to the mix.") MendingFigures mending,
    @Meaning("What the heap loses.") Losses losses,
    @Meaning("The finished compost.") Finished finished,
    @Meaning("Heat, and what it does not make safe.") HygieneFigures hygiene,
    @Meaning("What it gives to land.") Land land) {

  /**
   * Headline figures.
   *
   * @param finishedKg finished compost as it stands
   * @param nitrogenKg nitrogen in it
   * @param phosphorusKg phosphorus in it
   * @param potassiumKg potassium in it
   */
  @Meaning("Headline figures of the compost.")
  public record Annual(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Finished compost as it stands, its water included.")
          double finishedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen in the finished compost.")
          double nitrogenKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus in the finished compost.")
          double phosphorusKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium in the finished compost.")
          double potassiumKg) {}

  /**
   * The materials put together.
   *
   * @param freshKg their mass as they come
   * @param dryKg their dry mass
   * @param moistureFraction moisture as they come
   * @param holdsWaterKg water that they can hold
   * @param drainedWaterKg water that drains at once
   * @param drainedMoistureFraction moisture once it has drained
   * @param carbonToNitrogen carbon to nitrogen once it has drained
   * @param volumeM3 room that they take
   * @param bulkDensityKgM3 bulk density once drained
   * @param freeAirFraction share of the volume that is air
   * @param decayAllowedFraction share of decay that moisture, air and nitrogen allow
   */
  @Meaning("The materials put together.")
  public record MixFigures(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mass of the materials as they come.")
          double freshKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of the materials.")
          double dryKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Moisture of the materials as they come; null with none.")
          Double moistureFraction,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that the materials can hold without dripping.")
          double holdsWaterKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water beyond that, which drains at once.")
          double drainedWaterKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Moisture of the mix once it has drained; null with none.")
          Double drainedMoistureFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Carbon to nitrogen of the drained mix; null without nitrogen.")
          Double carbonToNitrogen,
      @Quantity(
              unit = "m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Room that the mix takes.")
          double volumeM3,
      @Quantity(
              unit = "kg/m3",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Bulk density of the drained mix; null with none.")
          Double bulkDensityKgM3,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of the mix's volume that is air; null with none.")
          Double freeAirFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share of decay that moisture, air and nitrogen allow; null with none.")
          Double decayAllowedFraction) {}

  /**
   * What to add to the mix.
   *
   * @param needed whether moisture or carbon to nitrogen is outside what is bearable
   * @param possible whether one or two additions bring both into it
   * @param additions the lightest such additions
   * @param moistureFraction moisture with them
   * @param carbonToNitrogen carbon to nitrogen with them
   */
  @Meaning("What to add so that moisture and carbon to nitrogen come into the ideal band.")
  public record MendingFigures(
      @Meaning(
              "Whether moisture or carbon to nitrogen, all water counted, is outside what is bearable.")
          boolean needed,
      @Meaning("Whether one or two additions bring both into the band.") boolean possible,
      @Meaning("The lightest such additions; none where none are needed or possible.")
          @Size(max = 2)
          List<AdditionFigures> additions,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Moisture of the mix with the additions; null without any.")
          Double moistureFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Carbon to nitrogen with the additions; null without any.")
          Double carbonToNitrogen) {}

  /**
   * One addition.
   *
   * @param ingredient id of the ingredient, or water
   */
  @Meaning("One addition.")
  public record AdditionFigures(
      @Meaning("Id of an ingredient of the catalogue, or water.") @Size(max = 60) String ingredient,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Mass as it comes.")
          double freshKg) {}

  /**
   * What the heap loses.
   *
   * @param carbonFraction carbon lost over carbon put in
   * @param nitrogenFraction nitrogen lost over nitrogen put in
   * @param dryFraction dry mass lost over dry mass put in
   * @param freshFraction mass lost over mass put in
   * @param volumeFraction volume lost over volume put in
   */
  @Meaning("What the heap loses, and the heat of it.")
  public record Losses(
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Carbon lost over carbon put in; null without any.")
          Double carbonFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Nitrogen lost over nitrogen put in; null without any.")
          Double nitrogenFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Dry mass lost over dry mass put in; null without any.")
          Double dryFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Mass lost over mass put in; null without any.")
          Double freshFraction,
      @Quantity(
              unit = "1",
              min = -Quantity.UNBOUNDED,
              max = 1,
              meaning = "Volume lost over volume put in; null without any.")
          Double volumeFraction,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen lost to the air as ammonia.")
          double ammoniaNitrogenKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen lost to the soil below.")
          double leachedNitrogenKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus lost to the soil below.")
          double leachedPhosphorusKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium lost to the soil below.")
          double leachedPotassiumKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Water that evaporates.")
          double evaporatedWaterKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Water that drains and drips.")
          double leachateKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Oxygen taken up.")
          double oxygenKg,
      @Quantity(unit = "kW.h", min = 0, max = Quantity.UNBOUNDED, meaning = "Heat set free.")
          double heatKWh) {}

  /**
   * The finished compost.
   *
   * @param moistureFraction its moisture
   * @param carbonToNitrogen its carbon to nitrogen
   * @param nitrogenFraction nitrogen of its dry mass
   * @param phosphateKg its phosphorus as P2O5
   * @param potashKg its potassium as K2O
   */
  @Meaning("The finished compost.")
  public record Finished(
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Its dry mass.")
          double dryKg,
      @Quantity(unit = "m3", min = 0, max = Quantity.UNBOUNDED, meaning = "Its volume.")
          double volumeM3,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Its moisture; null if there is none.")
          Double moistureFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its carbon to nitrogen; null without nitrogen.")
          Double carbonToNitrogen,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Nitrogen of its dry mass; null if there is none.")
          Double nitrogenFraction,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its phosphorus counted as P2O5.")
          double phosphateKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Its potassium counted as K2O.")
          double potashKg) {}

  /**
   * Heat, and what it does not make safe.
   *
   * @param excludedFromFoodEatenRaw whether it must never go to food eaten raw
   * @param moistureLimitFraction moisture up to which a heap can bear it
   * @param peakTemperatureC highest temperature in the middle
   * @param peakTemperatureLowC the lowest of it in the range
   * @param peakTemperatureHighC the highest of it in the range
   * @param above40Days days at 40 Cel or more
   * @param above55Days days at 55 Cel or more
   * @param above55LowDays the fewest in the range
   * @param above55HighDays the most in the range
   * @param heatLawFraction least heat in the range over what the rule for solids asks for
   * @param significantReduction the rule of 40 Cel for 5 days with 55 Cel for 4 hours
   * @param furtherReduction the rule of 55 Cel for 15 days with 5 turnings
   * @param heatWantingDays days at 55 Cel that are wanting for that rule
   * @param storageWantingDays days of storage that are wanting where heat is not shown
   */
  @Meaning("Heat, and what it does not make safe.")
  public record HygieneFigures(
      @Meaning("Whether anything in it comes from human waste or grew on it.") boolean humanOrigin,
      @Meaning(
              "Whether it must never go to food eaten raw: always so with human origin, whatever"
                  + " the heat.")
          boolean excludedFromFoodEatenRaw,
      @Meaning(
              "Whether the mix as it comes is wetter than a heap can bear: then its heat is not shown,"
                  + " and no rule on heat counts as met.")
          boolean tooWet,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Moisture of the mix as it comes up to which a heap can bear it.")
          double moistureLimitFraction,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Highest temperature in the middle of the heap; null with none.")
          Double peakTemperatureC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Lowest such peak in the range of the coefficients; null with none.")
          Double peakTemperatureLowC,
      @Quantity(
              unit = "Cel",
              min = Quantity.ABSOLUTE_ZERO_C,
              max = Quantity.UNBOUNDED,
              meaning = "Highest such peak in the range of the coefficients; null with none.")
          Double peakTemperatureHighC,
      @Quantity(
              unit = "d",
              min = 0,
              max = 365,
              meaning = "Days at 40 Cel or more in the middle; null with none.")
          Double above40Days,
      @Quantity(
              unit = "d",
              min = 0,
              max = 365,
              meaning = "Days at 55 Cel or more in the middle; null with none.")
          Double above55Days,
      @Quantity(
              unit = "d",
              min = 0,
              max = 365,
              meaning = "Fewest such days in the range of the coefficients; null with none.")
          Double above55LowDays,
      @Quantity(
              unit = "d",
              min = 0,
              max = 365,
              meaning = "Most such days in the range of the coefficients; null with none.")
          Double above55HighDays,
      @Quantity(unit = "1", min = 0, max = 100, meaning = "Times that the heap is turned.")
          double turnings,
      @Quantity(
              unit = "1",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Time at 50 Cel or more over the time that the rule for solids asks for, least in"
                      + " the range; null with none. Edges of a heap do not obey it.")
          Double heatLawFraction,
      @Meaning(
              "Rule of 40 Cel for 5 days with 55 Cel for 4 hours, which reduces germs but does not"
                  + " make safe.")
          Hygiene significantReduction,
      @Meaning("Rule of 55 Cel for 15 days with 5 turnings.") Hygiene furtherReduction,
      @Quantity(
              unit = "d",
              min = 0,
              max = 365,
              meaning =
                  "Days at 55 Cel by which the fewest in the range fall short of that rule; null with"
                      + " none.")
          Double heatWantingDays,
      @Quantity(
              unit = "d",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Days of storage still wanting where waste of human origin has not met that"
                      + " rule; nought otherwise.")
          double storageWantingDays) {}

  /**
   * What it gives to land.
   *
   * @param laterNitrogenKgPerYear nitrogen that they can take in each later year
   * @param fedByNitrogenM2 land whose vegetables' nitrogen it meets in the first year
   * @param fedByPhosphorusM2 the same for phosphorus
   * @param fedByPotassiumM2 the same for potassium
   * @param leastAreaForNitrogenLimitM2 land below which the yearly limit for nitrogen is passed
   * @param nitrogenLoadKgHa nitrogen on the plan's land
   * @param phosphateFertiliserSparedKg diammonium phosphate that its phosphorus stands in for
   * @param potashFertiliserSparedKg potash that its potassium stands in for
   * @param fertiliserWorthUsd price of those fertilisers
   */
  @Meaning("What the compost gives to land.")
  public record Land(
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Land that the plan names.")
          double landAreaM2,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen that crops can take in the first year.")
          double firstYearNitrogenKg,
      @Quantity(
              unit = "kg/a",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen that crops can take in each later year, at first.")
          double laterNitrogenKgPerYear,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus that stands in for fertiliser in the first year.")
          double firstYearPhosphorusKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium that stands in for fertiliser in the first year.")
          double firstYearPotassiumKg,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Land whose mixed vegetables' nitrogen it meets in the first year.")
          double fedByNitrogenM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Land whose mixed vegetables' phosphorus it meets in the first year.")
          double fedByPhosphorusM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Land whose mixed vegetables' potassium it meets in the first year.")
          double fedByPotassiumM2,
      @Quantity(
              unit = "m2",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Land below which the yearly limit for organic nitrogen is passed.")
          double leastAreaForNitrogenLimitM2,
      @Quantity(
              unit = "kg/har",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen that the plan's land receives.")
          double nitrogenLoadKgHa,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Urea that the first year's nitrogen stands in for.")
          double ureaSparedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Diammonium phosphate that the first year's phosphorus stands in for.")
          double phosphateFertiliserSparedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potash that the first year's potassium stands in for.")
          double potashFertiliserSparedKg,
      @Quantity(
              unit = "{USD}",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Price of those fertilisers in United States dollars, at the stated prices by"
                      + " the tonne; garden packs cost several times as much.")
          double fertiliserWorthUsd) {}
}
