package org.marshlight.compost;

import java.util.Optional;

/**
 * Holds the heat of a heap to the public rules. A heap that is too wet goes airless, which the
 * model of its heat does not see, so its heat shows nothing.
 */
final class HygieneVerdicts {

  private HygieneVerdicts() {}

  static CompostEstimate.HygieneFigures of(CompostRun run) {
    HygieneRules rules = run.set().bind(HygieneRules.class);
    Optional<HeapRange> range = run.range();
    boolean human = run.mix().humanOrigin();
    double turned = run.method().turnings();
    Optional<HeapRange> shown = range.filter(r -> !run.tooWet());
    Hygiene further =
        shown.map(r -> r.answer(c -> rules.further(c, turned))).orElse(Hygiene.NOT_MET);
    return new CompostEstimate.HygieneFigures(
        human,
        human,
        run.tooWet(),
        run.mixing().moistureBearableMost(),
        range.map(r -> r.middle().peakC()).orElse(null),
        range.map(r -> r.least(HeapCourse::peakC)).orElse(null),
        range.map(r -> r.greatest(HeapCourse::peakC)).orElse(null),
        range.map(r -> r.middle().above40Days()).orElse(null),
        range.map(r -> r.middle().above55Days()).orElse(null),
        range.map(r -> r.least(HeapCourse::above55Days)).orElse(null),
        range.map(r -> r.greatest(HeapCourse::above55Days)).orElse(null),
        turned,
        range.map(r -> r.least(HeapCourse::heatLawFraction)).orElse(null),
        shown.map(r -> r.answer(rules::significant)).orElse(Hygiene.NOT_MET),
        further,
        range
            .map(r -> Math.max(0, rules.hotDays() - r.least(HeapCourse::above55Days)))
            .orElse(null),
        human && further != Hygiene.MET ? rules.storageDays(run.site().meanC()) : 0);
  }
}
