package org.marshlight.crop;

import jakarta.validation.constraints.Size;
import java.util.List;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.TwelveMonths;

/** What grows on the beds and what is taken of it. Figures hold from the third year on. */
@Meaning("What grows on the beds and what is taken of it, from the third year on.")
public record CropEstimate(
    @Meaning("A year of mature stands.") Annual annual,
    @Meaning("All stands by month.") Monthly monthly,
    @Meaning("Each bed.") @Size(max = 8) List<Bed> beds,
    @Meaning("The years after planting.") @Size(max = 3) List<StandYear> years) {

  /** What holds growth back beside light and warmth. */
  public enum Limit {
    NOTHING,
    NITROGEN,
    PHOSPHORUS,
    POTASSIUM,
    WATER,
    HARVEST
  }

  /** The harvest of all beds in a year of mature stands. */
  @Meaning("The harvest of all beds in a year of mature stands.")
  public record Annual(
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of storage organs lifted.")
          double storageOrganDryKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Starch in them.")
          double starchKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Free sugar in them, as hexose.")
          double sugarKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of tops cut and carried off.")
          double topsDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry matter made by the plants.")
          double growthDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen taken up into the stands.")
          double nitrogenUptakeKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus taken up into the stands.")
          double phosphorusUptakeKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium taken up into the stands.")
          double potassiumUptakeKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Nitrogen that leaves with the harvest.")
          double nitrogenHarvestedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus that leaves with the harvest.")
          double phosphorusHarvestedKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Potassium that leaves with the harvest.")
          double potassiumHarvestedKg) {}

  /** All stands by month, mature. */
  @Meaning("All stands by month, mature.")
  public record Monthly(
      @TwelveMonths
          @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mean dry mass of tops.")
          List<Double> topsDryKg,
      @TwelveMonths
          @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mean dry mass of storage organs and roots.")
          List<Double> undergroundDryKg,
      @TwelveMonths
          @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Nitrogen taken up.")
          List<Double> nitrogenUptakeKg,
      @TwelveMonths
          @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Phosphorus taken up.")
          List<Double> phosphorusUptakeKg,
      @TwelveMonths
          @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium taken up.")
          List<Double> potassiumUptakeKg) {}

  /** The stand of one bed, mature. */
  @Meaning("The stand of one bed, mature.")
  public record Bed(
      @Meaning("Name of the bed in flows and balances.") @Size(max = 20) String name,
      @Meaning("Plant.") @Size(max = 60) String plant,
      @Quantity(unit = "m2", min = 0, max = Quantity.UNBOUNDED, meaning = "Area.") double areaM2,
      @Meaning("Mean dry mass by month.") BedMonthly monthly,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Greatest dry mass of tops.")
          double peakTopsDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass below ground when the harvest begins.")
          double undergroundBeforeHarvestDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of storage organs lifted.")
          double storageOrganDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Fresh mass of storage organs lifted.")
          double storageOrganFreshKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Starch in them.")
          double starchKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Starch in their dry mass at the harvest; null where nothing is lifted.")
          Double starchFraction,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Dry mass of tops cut.")
          double topsDryKg,
      @Quantity(unit = "1", min = 1, max = 12, meaning = "Month of the harvest, 1 = January.")
          int harvestMonth,
      @Quantity(unit = "1", min = 0, max = 1, meaning = "Share lifted.") double harvestedFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning = "Share that such a stand stands every year.")
          double sustainableFraction,
      @Meaning("What holds growth back most, beside light and warmth.") Limit limit,
      @Quantity(
              unit = "1",
              min = 0,
              max = 1,
              meaning =
                  "Growth lost to that, as a share of what else allows; 0 if nothing is lacking.")
          double limitedFraction,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning =
                  "Methane that the wet stand gives off, where its bed holds matter enough for it.")
          double methaneKg) {}

  /** The stand of one bed by month, mature. */
  @Meaning("The stand of one bed by month, mature.")
  public record BedMonthly(
      @TwelveMonths
          @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mean dry mass of tops.")
          List<Double> topsDryKg,
      @TwelveMonths
          @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Mean dry mass of storage organs and roots.")
          List<Double> undergroundDryKg) {}

  /** All beds in one year after planting. */
  @Meaning("All beds in one year after planting.")
  public record StandYear(
      @Quantity(
              unit = "1",
              min = 1,
              max = 100,
              meaning = "Year after planting; the last holds for all that follow.")
          int year,
      @Quantity(
              unit = "kg",
              min = 0,
              max = Quantity.UNBOUNDED,
              meaning = "Dry mass of storage organs lifted.")
          double storageOrganDryKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Starch in them.")
          double starchKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Dry mass of tops cut.")
          double topsDryKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Nitrogen taken up.")
          double nitrogenUptakeKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Phosphorus taken up.")
          double phosphorusUptakeKg,
      @Quantity(unit = "kg", min = 0, max = Quantity.UNBOUNDED, meaning = "Potassium taken up.")
          double potassiumUptakeKg) {}
}
