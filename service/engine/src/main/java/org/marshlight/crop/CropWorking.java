package org.marshlight.crop;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.climate.ClimateYear;
import org.marshlight.evidence.Step;

/** The steps behind a stand's growth at midsummer, to be redone by hand. */
final class CropWorking {

  private CropWorking() {}

  static List<Step> steps(CropStand stand, ClimateYear year, CropCoefficients c) {
    PlantTraits plant = stand.plant();
    int day = CropModel.midsummerDay(year);
    double temperature = year.dailyAirC()[day - 1];
    Step canopy =
        Step.of(
            "crop.canopy",
            plant.canopyGreatest(),
            stand.season().degreeDaysOn(day - 1),
            plant.canopyDegreeDays());
    Step warmth =
        Step.of(
            "crop.temperature-factor",
            temperature,
            plant.baseTemperature(),
            plant.optimumTemperature(),
            plant.declineTemperature(),
            plant.limitTemperature());
    Step growth =
        Step.of(
            "crop.potential-growth",
            plant.radiationUse(),
            c.parShare(),
            year.dailySolarMJM2()[day - 1],
            stand.bed().coverLightFraction(),
            canopy.value(),
            warmth.value());
    List<Step> steps = new ArrayList<>(List.of(canopy, warmth, growth));
    steps.add(Step.of("crop.content", growth.value(), plant.topsNitrogen()));
    steps.add(
        Step.of(
            "crop.storage-loss-rate",
            plant.storageLoss(),
            c.storageWarmFactor(),
            c.storageQ10(),
            temperature));
    steps.add(
        Step.of(
            "crop.starch-course",
            stand.season().harvestDay + 1,
            c.starchSpringDay(),
            c.starchLowestDay(),
            c.starchFullDay(),
            c.starchLowest()));
    return List.copyOf(steps);
  }
}
