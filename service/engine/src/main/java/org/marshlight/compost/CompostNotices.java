package org.marshlight.compost;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Notice;
import org.marshlight.contract.Sentences;

/** Remarks on a heap that a reader of its figures must have. */
final class CompostNotices {

  private CompostNotices() {}

  static List<Notice> of(CompostRun run, CompostEstimate estimate) {
    List<Notice> notices = new ArrayList<>();
    if (run.mix().empty()) {
      notices.add(Notice.of("compost.empty"));
      return List.copyOf(notices);
    }
    mix(run, estimate, notices);
    heat(run, estimate, notices);
    hygiene(estimate, notices);
    land(run, estimate, notices);
    return List.copyOf(notices);
  }

  private static void mix(CompostRun run, CompostEstimate estimate, List<Notice> notices) {
    CompostEstimate.MixFigures mix = estimate.mix();
    if (mix.drainedWaterKg() > 0) {
      notices.add(
          Notice.of(
              "compost.drains",
              "drainedWaterKg",
              mix.drainedWaterKg(),
              "holdsWaterKg",
              mix.holdsWaterKg()));
    }
    if (mix.freeAirFraction() < run.mixing().freeAirLeast()) {
      notices.add(Notice.of("compost.airless", "freeAirPercent", 100 * mix.freeAirFraction()));
    }
    if (mix.carbonToNitrogen() == null) {
      notices.add(Notice.of("compost.no-nitrogen"));
    }
    if (mix.decayAllowedFraction() < 1) {
      notices.add(
          Notice.of(
              "compost.held-back",
              "percent",
              100 * mix.decayAllowedFraction(),
              "moisturePercent",
              100 * mix.drainedMoistureFraction()));
    }
    mending(estimate.mending(), notices);
  }

  private static void mending(CompostEstimate.MendingFigures mending, List<Notice> notices) {
    if (!mending.needed()) {
      return;
    }
    if (!mending.possible()) {
      notices.add(Notice.of("compost.cannot-be-mended"));
      return;
    }
    StringBuilder additions = new StringBuilder();
    for (CompostEstimate.AdditionFigures addition : mending.additions()) {
      additions
          .append(additions.isEmpty() ? "" : " and ")
          .append(Sentences.number(addition.freshKg()))
          .append(" kg of ")
          .append(addition.ingredient());
    }
    notices.add(
        Notice.of(
            "compost.mend",
            "additions",
            additions.toString(),
            "moisturePercent",
            100 * mending.moistureFraction(),
            "carbonToNitrogen",
            mending.carbonToNitrogen()));
  }

  private static void heat(CompostRun run, CompostEstimate estimate, List<Notice> notices) {
    CompostEstimate.HygieneFigures hygiene = estimate.hygiene();
    if (run.tooWet()) {
      notices.add(
          Notice.severe(
              "compost.too-wet",
              "moisturePercent",
              100 * estimate.mix().moistureFraction(),
              "limitPercent",
              100 * run.mixing().moistureBearableMost()));
    } else if (hygiene.furtherReduction() != Hygiene.MET) {
      notices.add(
          Notice.of(
              "compost.not-hot-long-enough",
              "lowDays",
              hygiene.above55LowDays(),
              "days",
              hygiene.above55Days(),
              "highDays",
              hygiene.above55HighDays()));
    }
  }

  private static void hygiene(CompostEstimate estimate, List<Notice> notices) {
    CompostEstimate.HygieneFigures hygiene = estimate.hygiene();
    if (hygiene.humanOrigin()) {
      notices.add(
          Notice.of("compost.human-origin", "storageWantingDays", hygiene.storageWantingDays()));
      notices.add(Notice.of("compost.crop-waiting"));
    }
    notices.add(Notice.of("compost.metals-unknown"));
  }

  private static void land(CompostRun run, CompostEstimate estimate, List<Notice> notices) {
    CompostEstimate.Land land = estimate.land();
    if (land.leastAreaForNitrogenLimitM2() > land.landAreaM2()) {
      notices.add(
          Notice.of(
              "compost.nitrogen-limit",
              "loadKgHa",
              land.nitrogenLoadKgHa(),
              "limitKgHa",
              run.returning().nitrogenLimitKgHa(),
              "neededM2",
              land.leastAreaForNitrogenLimitM2()));
    }
    Double ratio = estimate.finished().carbonToNitrogen();
    if (ratio != null && ratio > run.decay().poorRatio()) {
      notices.add(Notice.of("compost.binds-nitrogen", "carbonToNitrogen", ratio));
    }
  }
}
