package org.marshlight.compost;

import java.util.List;
import java.util.Optional;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.feed.Matter;

/** Tells a heap as figures. */
final class CompostFigures {

  private CompostFigures() {}

  static CompostEstimate of(CompostRun run) {
    Matter finished = run.heap().finished();
    return new CompostEstimate(
        new CompostEstimate.Annual(
            finished.freshKg(),
            finished.nitrogenKg(),
            finished.phosphorusKg(),
            finished.potassiumKg()),
        mix(run),
        mending(run),
        losses(run),
        finished(run),
        HygieneVerdicts.of(run),
        LandReturn.of(run));
  }

  private static CompostEstimate.MixFigures mix(CompostRun run) {
    Mix mix = run.mix();
    Matter whole = mix.whole();
    boolean any = !mix.empty();
    return new CompostEstimate.MixFigures(
        whole.freshKg(),
        whole.totalSolidsKg(),
        ratio(whole.waterKg(), whole.freshKg()),
        mix.holdsKg(),
        mix.drained().waterKg(),
        any ? mix.moisture() : null,
        finite(mix.carbonToNitrogen()),
        mix.volumeM3(),
        any ? mix.bulkDensityKgM3() : null,
        any ? mix.freeAirSpace() : null,
        any ? run.heap().allowed() : null);
  }

  private static CompostEstimate.MendingFigures mending(CompostRun run) {
    Matter whole = run.mix().whole();
    MixCoefficients c = run.mixing();
    CoefficientSet set = run.set();
    if (run.mix().empty() || !Mending.needed(whole, c)) {
      return new CompostEstimate.MendingFigures(false, !run.mix().empty(), List.of(), null, null);
    }
    Optional<List<Mending.Addition>> additions = Mending.of(whole, c, set);
    if (additions.isEmpty()) {
      return new CompostEstimate.MendingFigures(true, false, List.of(), null, null);
    }
    Matter mended = Mending.mended(whole, additions.get(), c);
    return new CompostEstimate.MendingFigures(
        true,
        true,
        additions.get().stream()
            .map(
                each -> new CompostEstimate.AdditionFigures(each.candidate().name(), each.massKg()))
            .toList(),
        mended.waterKg() / mended.freshKg(),
        finite(Mix.ratio(mended)));
  }

  private static CompostEstimate.Losses losses(CompostRun run) {
    Mix mix = run.mix();
    Heap heap = run.heap();
    Matter in = mix.whole();
    Matter out = heap.finished();
    Matter leachate = run.leachate();
    return new CompostEstimate.Losses(
        lost(in.carbonKg(), out.carbonKg()),
        lost(in.nitrogenKg(), out.nitrogenKg()),
        lost(in.totalSolidsKg(), out.totalSolidsKg()),
        lost(in.freshKg(), out.freshKg()),
        lost(mix.volumeM3(), finishedVolumeM3(run)),
        heap.ammoniaKg(),
        leachate.nitrogenKg(),
        leachate.phosphorusKg(),
        leachate.potassiumKg(),
        heap.evaporatedKg(),
        leachate.waterKg(),
        heap.decayed().codKg(),
        heap.heatKWh());
  }

  private static CompostEstimate.Finished finished(CompostRun run) {
    Matter finished = run.heap().finished();
    return new CompostEstimate.Finished(
        finished.totalSolidsKg(),
        finishedVolumeM3(run),
        ratio(finished.waterKg(), finished.freshKg()),
        finite(Mix.ratio(finished)),
        ratio(finished.nitrogenKg(), finished.totalSolidsKg()),
        NutrientReturn.phosphateKg(finished.phosphorusKg()),
        NutrientReturn.potashKg(finished.potassiumKg()));
  }

  private static double finishedVolumeM3(CompostRun run) {
    return run.heap().finished().freshKg() / run.decay().finishedBulkDensityKgM3();
  }

  private static Double lost(double in, double out) {
    return in > 0 ? 1 - out / in : null;
  }

  private static Double ratio(double part, double whole) {
    return whole > 0 ? part / whole : null;
  }

  /** A ratio, or null where there is nothing to divide by. */
  private static Double finite(double value) {
    return Double.isFinite(value) ? value : null;
  }
}
