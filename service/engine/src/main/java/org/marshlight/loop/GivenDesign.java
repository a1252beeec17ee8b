package org.marshlight.loop;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.marshlight.contract.CatalogueId;
import org.marshlight.contract.Meaning;
import org.marshlight.contract.Quantity;

/**
 * What stands in for stages upstream, so that a stage may be asked for alone.
 *
 * @param effluent outflow of a tank
 * @param harvest harvest of the beds
 * @param stillage what a still leaves
 */
@Meaning("What stands in for stages upstream, so that a stage may be asked for alone.")
public record GivenDesign(
    @Valid @Meaning("Outflow of a tank, in place of running the tank.") Effluent effluent,
    @Valid @Meaning("Harvest of the beds, in place of growing it.") Harvest harvest,
    @Valid @Meaning("What a still leaves, in place of distilling.") Stillage stillage) {

  /** Outflow of a tank. */
  @Meaning("Outflow of a tank; what is not given is that of a usual septic tank.")
  public record Effluent(
      @NotNull @Quantity(unit = "m3/d", min = 0.001, max = 500, meaning = "Flow on each day.")
          Double flowM3Day,
      @Quantity(
              unit = "Cel",
              min = 0.5,
              max = 45,
              meaning = "Temperature of the flow through the year.",
              usual = "wetland.default.effluent-temperature")
          Double temperatureC,
      @Quantity(
              unit = "mg/L",
              min = 1,
              max = 20000,
              meaning = "Five-day biochemical oxygen demand.",
              usual = "wetland.default.effluent-bod5")
          Double bod5MgL,
      @Quantity(
              unit = "mg/L",
              min = 1,
              max = 40000,
              meaning = "Chemical oxygen demand.",
              usual = "wetland.default.effluent-cod")
          Double codMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = 20000,
              meaning = "Suspended solids.",
              usual = "wetland.default.effluent-suspended-solids")
          Double suspendedSolidsMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = 5000,
              meaning = "Total nitrogen.",
              usual = "wetland.default.effluent-nitrogen")
          Double totalNitrogenMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = 1000,
              meaning = "Total phosphorus.",
              usual = "wetland.default.effluent-phosphorus")
          Double totalPhosphorusMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = 5000,
              meaning = "Potassium.",
              usual = "wetland.default.effluent-potassium")
          Double potassiumMgL,
      @Quantity(
              unit = "mg/L",
              min = 0,
              max = 50000,
              meaning = "Dissolved minerals, those of the water supply included.",
              usual = "wetland.default.effluent-dissolved-solids")
          Double dissolvedSolidsMgL,
      @Quantity(
              unit = "{CFU}/dL",
              min = 0,
              max = 1e11,
              meaning = "Faecal coliforms in 100 mL.",
              usual = "wetland.default.effluent-coliforms")
          Double faecalColiformsPer100ML) {}

  /** Harvest of the beds. */
  @Meaning("Harvest of the beds in a year.")
  public record Harvest(
      @NotNull @Meaning("Id of a plant of the catalogue.") @CatalogueId("plants") @Size(max = 60)
          String plant,
      @NotNull
          @Quantity(
              unit = "kg",
              min = 0,
              max = 1e6,
              meaning = "Dry mass of storage organs lifted in a year.")
          Double storageOrganDryKg,
      @Quantity(
              unit = "kg",
              min = 0,
              max = 1e6,
              meaning = "Dry mass of tops cut in a year; none if not given.")
          Double topsDryKg,
      @Quantity(
              unit = "1",
              min = 0,
              max = 0.9,
              meaning = "Starch in the organs' dry mass; the plant's own if not given.")
          Double starchFraction,
      @Meaning("Whether it grew on human waste; yes if not given.") Boolean humanOrigin) {

    /** Whether it is held to have grown on human waste: unless the plan says that it did not. */
    boolean ofHumanOrigin() {
      return !Boolean.FALSE.equals(humanOrigin);
    }
  }

  /** What a still leaves. */
  @Meaning("What a still leaves in a year; what is not given is usual for starch.")
  public record Stillage(
      @NotNull
          @Quantity(unit = "kg", min = 0, max = 1e7, meaning = "Fresh mass of stillage in a year.")
          Double freshKg,
      @Quantity(
              unit = "1",
              min = 0.001,
              max = 0.5,
              meaning = "Dry share of its mass.",
              usual = "ethanol.default.stillage-solids")
          Double totalSolidsFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 0.2,
              meaning = "Nitrogen in its dry mass.",
              usual = "ethanol.default.stillage-nitrogen")
          Double nitrogenFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 0.1,
              meaning = "Phosphorus in its dry mass.",
              usual = "ethanol.default.stillage-phosphorus")
          Double phosphorusFraction,
      @Quantity(
              unit = "1",
              min = 0,
              max = 0.2,
              meaning = "Potassium in its dry mass.",
              usual = "ethanol.default.stillage-potassium")
          Double potassiumFraction,
      @Meaning("Whether what was mashed grew on human waste; yes if not given.")
          Boolean humanOrigin) {

    /** Whether it is held to come of human waste: unless the plan says that it does not. */
    boolean ofHumanOrigin() {
      return !Boolean.FALSE.equals(humanOrigin);
    }
  }
}
