package org.marshlight.ethanol;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.contract.Notice;

/** Remarks on a run that a reader of its figures must have. */
final class EthanolNotices {

  private EthanolNotices() {}

  static List<Notice> of(EthanolRun run, EthanolEstimate estimate, boolean humanOrigin) {
    List<Notice> notices = new ArrayList<>();
    mash(run, notices);
    if (run.beer().ethanolKg() > 0) {
      still(run, estimate, notices);
      energy(run, estimate, notices);
    }
    if (humanOrigin && run.mash().organs().freshKg() > 0) {
      notices.add(Notice.of("ethanol.human-origin"));
    }
    return List.copyOf(notices);
  }

  private static void mash(EthanolRun run, List<Notice> notices) {
    Mash mash = run.mash();
    if (mash.organs().freshKg() <= 0) {
      notices.add(Notice.of("ethanol.nothing-mashed"));
      return;
    }
    for (Draw draw : mash.draws()) {
      if (draw.limited()) {
        notices.add(
            Notice.of(
                "ethanol.starch-exceeds-organs",
                "bed",
                draw.from(),
                "plant",
                draw.plant(),
                "statedKg",
                draw.statedStarchKg(),
                "takenKg",
                draw.starchKg()));
      }
    }
    if (mash.glucoseKg() <= 0) {
      notices.add(Notice.of("ethanol.no-starch"));
    }
    if (run.beer().stoppedByStrength()) {
      notices.add(Notice.of("ethanol.yeast-limit", "limitPercentVol", 100 * run.c().yeastLimit()));
    }
  }

  private static void still(EthanolRun run, EthanolEstimate estimate, List<Notice> notices) {
    EthanolEstimate.Target target = estimate.target();
    if (!run.makesFuel()) {
      notices.add(
          Notice.of(
              "ethanol.too-weak-to-distil",
              "strengthPercentVol",
              estimate.mash().beerStrengthPercentVol()));
      return;
    }
    double strength = estimate.still().productStrengthPercentVol();
    double wanted = 100 * run.c().fuelStrength();
    if (strength < wanted) {
      notices.add(
          Notice.of(
              "ethanol.too-weak-to-burn",
              "strengthPercentVol",
              strength,
              "wantedPercentVol",
              wanted));
    }
    if (run.still().kind() == StillKind.COLUMN
        && run.still().refluxRatio() < target.leastRefluxRatio()) {
      notices.add(
          Notice.of(
              "ethanol.reflux-too-low",
              "refluxRatio",
              run.still().refluxRatio(),
              "leastRefluxRatio",
              target.leastRefluxRatio(),
              "strengthPercentVol",
              target.strengthPercentVol()));
    }
    if (estimate.still().flashPointC() != null) {
      notices.add(
          Notice.of(
              "ethanol.flash-point",
              "strengthPercentVol",
              strength,
              "flashPointC",
              estimate.still().flashPointC()));
    }
    if (estimate.still().firstRunFlashPointC() != null) {
      notices.add(
          Notice.of(
              "ethanol.first-run-flash-point",
              "strengthPercentVol",
              estimate.still().firstRunStrengthPercentVol(),
              "flashPointC",
              estimate.still().firstRunFlashPointC()));
    }
  }

  private static void energy(EthanolRun run, EthanolEstimate estimate, List<Notice> notices) {
    EthanolEstimate.Annual annual = estimate.annual();
    if (annual.netEnergyKWh() < 0) {
      notices.add(
          Notice.of(
              "ethanol.costs-more-than-it-holds",
              "spentKWh",
              estimate.heat().primaryEnergyKWh(),
              "heldKWh",
              annual.fuelEnergyKWh()));
    }
    if (estimate.mash().breakEvenStrengthPercentVol() == null) {
      notices.add(
          Notice.of(
              "ethanol.never-breaks-even",
              "source",
              run.fuel().heat(),
              "limitPercentVol",
              estimate.mash().limitPercentVol()));
    }
    if (estimate.instead().methaneEnergyKWh() > annual.netEnergyKWh()) {
      notices.add(
          Notice.of(
              "ethanol.more-as-methane",
              "methaneEnergyKWh",
              estimate.instead().methaneEnergyKWh(),
              "netEnergyKWh",
              annual.netEnergyKWh()));
    }
    if (EthanolFigures.isOwn(run.fuel().heat())) {
      notices.add(
          Notice.of(
              "ethanol.own-heat",
              "source",
              run.fuel().heat(),
              "sourceEnergyKWh",
              estimate.heat().sourceEnergyKWh()));
    }
    if (run.mash().maltKg() > 0) {
      notices.add(
          Notice.of(
              "ethanol.malt-brings-sugar", "percent", 100 * estimate.mash().fromMaltFraction()));
    }
  }
}
