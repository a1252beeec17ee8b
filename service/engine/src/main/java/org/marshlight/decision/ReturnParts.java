package org.marshlight.decision;

import org.marshlight.compost.CompostEstimate;
import org.marshlight.compost.Hygiene;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Measure;
import org.marshlight.decision.Verdict.Worth;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.loop.Closure;
import org.marshlight.loop.Conserved;
import org.marshlight.loop.LoopRun;

/** Judges what is made of the harvest: fuel alcohol and compost. */
final class ReturnParts {

  private final Comparisons basis;
  private final Effects with;
  private final WorkEstimate work;
  private final PartMoney money;
  private final DecisionCoefficients thresholds;

  ReturnParts(Comparisons basis, Effects with, WorkEstimate work) {
    this.basis = basis;
    this.with = with;
    this.work = work;
    this.money = new PartMoney(basis, work);
    this.thresholds = basis.set().bind(DecisionCoefficients.class);
  }

  /**
   * Fuel alcohol; null without. Energy speaks first: no price makes up for fuel that takes more
   * than it gives.
   */
  Verdict fuelAlcohol() {
    if (with.run().ethanol() == null) {
      return null;
    }
    Part part =
        new Part(
            Component.FUEL_ALCOHOL,
            null,
            with,
            basis.effects(PlanWithout.fuel(basis.plan())),
            money.alcohol(with.run()),
            basis,
            work.hoursOf(Component.FUEL_ALCOHOL));
    part.provided("decision.permit-for-distilling");
    EthanolEstimate ethanol = with.run().ethanol().estimate();
    double fuel = ethanol.annual().fuelEnergyKWh();
    double net = ethanol.annual().netEnergyKWh();
    double spent = ethanol.heat().primaryEnergyKWh();
    Measure ratio =
        new Measure(
            spent > 0 ? fuel / spent : fuel > 0 ? thresholds.fuelRatioYes() : 0,
            thresholds.fuelRatioYes(),
            Math.min(1, thresholds.fuelRatioYes()),
            "1");
    if (ethanol.annual().ethanolL() <= 0) {
      part.because("decision.fuel-none");
      return part.finished(Verdict.Basis.ENERGY, ratio, Worth.NO);
    }
    Double beer = ethanol.mash().beerStrengthPercentVol();
    part.because("decision.fuel-net", "fuelEnergyKWh", fuel, "spentKWh", spent, "netEnergyKWh", net)
        .because(
            "decision.fuel-litres",
            "ethanolL",
            ethanol.annual().ethanolL(),
            "beerPercent",
            beer == null ? 0 : beer)
        .because(
            "decision.fuel-as-gas",
            "methaneKWh",
            ethanol.instead().methaneEnergyKWh(),
            "fuelEnergyKWh",
            fuel);
    if (net <= 0) {
      return part.finished(Verdict.Basis.ENERGY, ratio, Worth.NO);
    }
    return part.byMoneyOr(ratio);
  }

  /** Compost; null without. */
  Verdict compost() {
    if (with.run().compost() == null) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.compost(basis.plan()));
    Part part =
        new Part(
            Component.COMPOST,
            null,
            with,
            without,
            money.compost(with.run()),
            basis,
            work.hoursOf(Component.COMPOST));
    CompostEstimate compost = with.run().compost().estimate();
    if (compost.hygiene().tooWet()) {
      part.failing(
          "decision.compost-too-wet",
          "moisturePercent",
          Part.percent(compost.mix().moistureFraction()),
          "limitPercent",
          Part.percent(compost.hygiene().moistureLimitFraction()));
    }
    if (IrrigatedNutrients.of(with.run(), basis.set()).matter()) {
      part.failing("decision.compost-beside-irrigation");
    }
    Double returned = returnedPhosphorus(with.run());
    double share = returned == null ? 0 : returned;
    part.because(
            "decision.compost-returns",
            "phosphorusKg",
            compost.annual().phosphorusKg(),
            "nitrogenKg",
            compost.annual().nitrogenKg(),
            "potassiumKg",
            compost.annual().potassiumKg(),
            "returnedPercent",
            Part.percent(share))
        .because("decision.compost-without", "withoutKg", without.land().phosphorusKg())
        .provided("decision.hygiene-not-shown");
    if (compost.hygiene().furtherReduction() != Hygiene.MET
        && compost.hygiene().storageWantingDays() > 0) {
      part.provided("decision.compost-store-first", "days", compost.hygiene().storageWantingDays());
    }
    return part.by(
        Verdict.Basis.NUTRIENTS,
        new Measure(
            share, thresholds.compostReturnedYes(), thresholds.compostReturnedMarginal(), "1"));
  }

  private static Double returnedPhosphorus(LoopRun run) {
    for (Closure closure : run.closure()) {
      if (closure.quantity().equals(Conserved.PHOSPHORUS.wireName())) {
        return closure.returnedFraction();
      }
    }
    throw new IllegalStateException("no closure of phosphorus");
  }
}
