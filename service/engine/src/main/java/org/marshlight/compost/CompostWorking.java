package org.marshlight.compost;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Matter;

/** The steps of a heap, through the formula book. */
final class CompostWorking {

  /** Beyond this ratio of carbon to nitrogen all mixes are alike. */
  private static final double POOREST = 1e6;

  private CompostWorking() {}

  static List<Step> of(CompostRun run) {
    if (run.mix().empty()) {
      return List.of();
    }
    List<Step> steps = new ArrayList<>();
    mix(run, steps);
    heat(run, steps);
    returned(run, steps);
    return List.copyOf(steps);
  }

  private static void mix(CompostRun run, List<Step> steps) {
    Mix mix = run.mix();
    DecayCoefficients c = run.decay();
    steps.add(Step.of("compost.free-air-space", mix.bulkDensityKgM3()));
    steps.add(
        Step.of(
            "compost.moisture-factor", mix.moisture(), c.stopsAtMoisture(), c.freeFromMoisture()));
    steps.add(
        Step.of(
            "compost.air-factor", mix.freeAirSpace(), run.mixing().freeAirLeast(), c.withoutAir()));
    double ratio = Math.min(POOREST, mix.carbonToNitrogen());
    if (ratio > 0.1) {
      steps.add(Step.of("compost.nitrogen-factor", ratio, c.freeToRatio()));
    }
    steps.add(
        Step.of(
            "compost.nitrogen-loss",
            ratio,
            c.richRatio(),
            c.richLoss(),
            c.poorRatio(),
            c.poorLoss()));
  }

  private static void heat(CompostRun run, List<Step> steps) {
    Matter decayed = run.heap().decayed();
    Matter moist = run.mix().moist();
    HeatCoefficients c = run.set().bind(HeatCoefficients.class);
    steps.add(Step.of("compost.heat-of-oxygen", decayed.codKg(), c.heatOfOxygenMJKg()));
    steps.add(
        Step.of(
            "feed.water-of-reaction",
            moist.volatileSolidsKg(),
            moist.codKg(),
            moist.organicCarbonKg(),
            moist.organicNitrogenKg()));
    double volume = run.mix().volumeM3() * run.method().batchShare();
    double surface = HeapHeat.surfaceM2(volume, run.method().greatestHeightM());
    double peak = run.range().orElseThrow().middle().peakC();
    double air = run.startAirC();
    steps.add(Step.of("compost.heap-surface", volume, run.method().greatestHeightM()));
    steps.add(
        Step.of(
            "compost.surface-conductance", volume / surface, c.conductivityWMK(), c.filmM2KW()));
    steps.add(Step.of("compost.decay-rate", peak, c.rateAt20PerDay()));
    steps.add(Step.of("compost.heat-of-air", peak, air, c.airExcess(), c.evaporationMJKg()));
    if (peak >= 50) {
      steps.add(Step.of("compost.heat-time-of-solids", peak));
    }
  }

  private static void returned(CompostRun run, List<Step> steps) {
    Matter finished = run.heap().finished();
    ReturnCoefficients c = run.returning();
    double removal = NutrientReturn.cropRemovalKgHa(c.gardenYieldTHa(), c.removalOfNitrogenKgT());
    double available = finished.nitrogenKg() * LandReturn.availableNitrogen(finished, c);
    steps.add(Step.of("compost.phosphate-of-phosphorus", finished.phosphorusKg()));
    steps.add(Step.of("compost.potash-of-potassium", finished.potassiumKg()));
    steps.add(Step.of("compost.crop-removal", c.gardenYieldTHa(), c.removalOfNitrogenKgT()));
    steps.add(Step.of("compost.land-served", available, removal));
    steps.add(Step.of("compost.land-served", finished.nitrogenKg(), c.nitrogenLimitKgHa()));
  }
}
