package org.marshlight.ethanol;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.evidence.Step;
import org.marshlight.feed.Stoichiometry;

/** The steps of a run, through the formula book. */
final class EthanolWorking {

  private EthanolWorking() {}

  static List<Step> of(EthanolRun run) {
    List<Step> steps = new ArrayList<>();
    if (run.beer().ethanolKg() <= 0) {
      return List.of();
    }
    mash(run, steps);
    if (run.makesFuel()) {
      steps.add(boiling(run));
      if (run.still().kind() == StillKind.POT) {
        pot(run, steps);
      } else {
        column(run, steps);
      }
      product(run, steps);
    }
    return List.copyOf(steps);
  }

  private static void mash(EthanolRun run, List<Step> steps) {
    Mash mash = run.mash();
    Beer beer = run.beer();
    EthanolCoefficients c = run.c();
    for (Draw draw : mash.draws()) {
      steps.add(
          Step.of(
              "ethanol.glucose-of-starch",
              draw.starchKg(),
              draw.mashing().release(run.fuel().route())));
    }
    steps.add(Step.of("ethanol.ethanol-of-glucose", mash.glucoseKg(), c.fermentation()));
    steps.add(Step.of("ethanol.ethanol-of-strength", beer.waterKg(), c.yeastLimit()));
    steps.add(Step.of("ethanol.carbon-dioxide-of-ethanol", beer.ethanolKg()));
    steps.add(Step.of("ethanol.beer-strength", beer.ethanolKg(), beer.waterKg()));
    steps.add(
        Step.of(
            "ethanol.sensible-heat",
            beer.mashWaterKg(),
            c.heatCapacityOfWater(),
            c.waterTemperatureC(),
            run.distillery().mashTemperatureC()));
    steps.add(
        Step.of(
            "ethanol.sensible-heat",
            beer.mashSolidsKg(),
            c.heatCapacityOfSolids(),
            c.waterTemperatureC(),
            run.distillery().mashTemperatureC()));
  }

  /** The boiling point of the beer, which the heat of its warming goes to. */
  private static Step boiling(EthanolRun run) {
    return Step.of(
        "ethanol.bubble-temperature",
        Charge.of(run.beer()).moleFraction(),
        run.distillery().pressureKPa());
  }

  private static void pot(EthanolRun run, List<Step> steps) {
    double end = Alcoholometry.moleFractionOfVolume(run.c().potEndStrength());
    double charge = Charge.of(run.beer()).moleFraction();
    for (int i = 0; i < run.still().runs(); i++) {
      steps.add(Step.of("ethanol.rayleigh-residue", charge, end));
      steps.add(Step.of("ethanol.rayleigh-distillate", charge, end));
      charge = Rayleigh.distillateMoleFraction(charge, end);
    }
    Separation separation = run.distilling().separation();
    steps.add(
        Step.of(
            "ethanol.latent-heat",
            separation.ethanolKg(),
            separation.waterKg(),
            run.c().latentEthanolKJMol(),
            run.c().latentWaterKJMol()));
  }

  private static void column(EthanolRun run, List<Step> steps) {
    Separation separation = run.distilling().separation();
    Charge left = new Charge(separation.leftEthanolKg(), separation.leftWaterKg(), 0);
    double feed = Charge.of(run.beer()).moleFraction();
    double target =
        Alcoholometry.moleFractionOfVolume(EthanolFigures.targetStrength(run.still(), run.c()));
    double plates = run.still().theoreticalPlates();
    double reflux = run.still().refluxRatio();
    steps.add(
        Step.of(
            "ethanol.column-distillate",
            feed,
            left.moleFraction(),
            plates,
            reflux,
            ColumnStill.SATURATED));
    if (target > feed) {
      steps.add(Step.of("ethanol.minimum-reflux", target, feed, ColumnStill.SATURATED));
      steps.add(Step.of("ethanol.minimum-stages", target, left.moleFraction()));
    }
    double over = new Charge(separation.ethanolKg(), separation.waterKg(), 0).kmol();
    double vapour = McCabeThiele.vapourFraction(left.moleFraction());
    steps.add(Step.of("ethanol.measured-vapour-fraction", left.moleFraction()));
    steps.add(
        Step.of(
            "ethanol.boil-up-heat",
            over,
            reflux,
            vapour * run.c().latentEthanolKJMol() + (1 - vapour) * run.c().latentWaterKJMol()));
  }

  private static void product(EthanolRun run, List<Step> steps) {
    Distilling distilling = run.distilling();
    EthanolCoefficients c = run.c();
    double massFraction = distilling.ethanolKg() / (distilling.ethanolKg() + distilling.waterKg());
    steps.add(Step.of("ethanol.volume-fraction", massFraction));
    steps.add(Step.of("ethanol.density", massFraction, 20));
    steps.add(
        Step.of(
            "ethanol.hydrous-heating-value",
            massFraction,
            c.netHeatingValueMJKg(),
            c.waterEvaporationMJKg()));
    if (EthanolFigures.flashes(run.productStrength())) {
      steps.add(Step.of("ethanol.flash-point", run.productStrength(), c.pureFlashPointC()));
    }
    double digestible = run.mash().organs().codKg() * run.c().methaneShare();
    steps.add(Step.of("feed.methane-of-cod", digestible));
    steps.add(Step.of("digester.methane-energy", Stoichiometry.methaneOfCodNm3(digestible)));
  }
}
