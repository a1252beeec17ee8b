package org.marshlight.ethanol;

import java.util.OptionalDouble;
import org.marshlight.digester.MethaneKinetics;
import org.marshlight.evidence.Catalogues;
import org.marshlight.feed.Matter;
import org.marshlight.feed.Stoichiometry;

/** Tells a run as figures. */
final class EthanolFigures {

  private static final double PERCENT = 100;
  private static final double MJ_PER_KWH = 3.6;

  /** Kind of those items of the catalogue of fuels that the plan itself gives. */
  private static final String OWN = "own";

  /** Below this strength by volume no flash point is stated. */
  private static final double WEAKEST_THAT_FLASHES = 0.02;

  private EthanolFigures() {}

  static EthanolEstimate of(EthanolRun run, OptionalDouble breakEven) {
    return new EthanolEstimate(
        annual(run),
        mash(run, breakEven),
        still(run),
        heat(run),
        target(run),
        stillage(run),
        instead(run));
  }

  private static EthanolEstimate.Annual annual(EthanolRun run) {
    Distilling distilling = run.distilling();
    return new EthanolEstimate.Annual(
        Fermentation.litres(distilling.ethanolKg()),
        distilling.processKWh(),
        distilling.fuelKWh(),
        distilling.netKWh());
  }

  private static EthanolEstimate.MashFigures mash(EthanolRun run, OptionalDouble breakEven) {
    Mash mash = run.mash();
    Beer beer = run.beer();
    Matter organs = mash.organs();
    double maltSugar = Fermentation.glucoseKg(mash.releasedMaltStarchKg(), 1);
    return new EthanolEstimate.MashFigures(
        organs.freshKg(),
        organs.totalSolidsKg(),
        mash.starchKg(),
        mash.sugarKg(),
        mash.waterKg(),
        mash.maltKg(),
        mash.enzymeKg(),
        mash.yeastKg(),
        mash.glucoseKg(),
        mash.glucoseKg() > 0 ? maltSugar / mash.glucoseKg() : null,
        beer.ethanolKg(),
        beer.carbonDioxideKg(),
        beer.ethanolKg() > 0 ? PERCENT * beer.strength() : null,
        PERCENT * run.c().yeastLimit(),
        breakEven.isPresent() ? PERCENT * breakEven.getAsDouble() : null);
  }

  private static EthanolEstimate.StillFigures still(EthanolRun run) {
    Distilling distilling = run.distilling();
    boolean made = run.makesFuel();
    double product = distilling.ethanolKg() + distilling.waterKg();
    double massFraction = made ? distilling.ethanolKg() / product : 0;
    double strength = run.productStrength();
    return new EthanolEstimate.StillFigures(
        run.still().kind(),
        run.distillery().pressureKPa(),
        run.beer().ethanolKg() > 0 ? beerBoilsAtC(run) : null,
        product / Alcoholometry.densityKgM3(massFraction, 20) * 1000,
        made ? PERCENT * strength : null,
        run.beer().ethanolKg() > 0 ? distilling.ethanolKg() / run.beer().ethanolKg() : null,
        Fermentation.litres(distilling.lostEthanolKg()),
        made
            ? FuelProperties.heatingValueMJL(
                massFraction, run.c().netHeatingValueMJKg(), run.c().waterEvaporationMJKg())
            : null,
        flashPointC(OptionalDouble.of(strength), run.c()),
        firstRun(run).isPresent() ? PERCENT * firstRun(run).getAsDouble() : null,
        flashPointC(firstRun(run), run.c()));
  }

  private static OptionalDouble firstRun(EthanolRun run) {
    return run.still().kind() == StillKind.POT
        ? PotStill.firstRunStrength(run.beer(), run.still().runs(), run.c())
        : OptionalDouble.empty();
  }

  private static Double flashPointC(OptionalDouble strength, EthanolCoefficients c) {
    return strength.isPresent() && flashes(strength.getAsDouble())
        ? FuelProperties.flashPointC(strength.getAsDouble(), c.pureFlashPointC())
        : null;
  }

  private static double beerBoilsAtC(EthanolRun run) {
    return EthanolWaterEquilibrium.bubbleTemperatureC(
        Charge.of(run.beer()).moleFraction(), run.distillery().pressureKPa());
  }

  private static EthanolEstimate.HeatFigures heat(EthanolRun run) {
    Distilling distilling = run.distilling();
    Separation separation = distilling.separation();
    String source = run.fuel().heat();
    double fired = distilling.firedKWh();
    boolean own = isOwn(source);
    Double kg =
        FuelContent.of(source, run.set())
            .map(content -> fired * MJ_PER_KWH / content.netHeatingValueMJKg())
            .orElse(null);
    return new EthanolEstimate.HeatFigures(
        distilling.mashKWh(),
        distilling.mashReusedKWh(),
        separation.feedKWh(),
        separation.recoveredKWh(),
        separation.boilUpKWh(),
        separation.refluxKWh(),
        distilling.vesselLossKWh(),
        source,
        run.distillery().source().processEfficiency(),
        fired,
        own ? 0 : fired,
        own ? fired : 0,
        kg,
        kg == null
            ? null
            : LiquidFuel.of(source, run.set()).map(liquid -> kg / liquid.densityKgL()).orElse(null),
        run.electricityKWh(),
        distilling.spentKWh(),
        run.makesFuel()
            ? distilling.processKWh() * MJ_PER_KWH / Fermentation.litres(distilling.ethanolKg())
            : null,
        distilling.spentKWh() > 0 ? distilling.fuelKWh() / distilling.spentKWh() : null);
  }

  /** Whether a fuel is the plan's own gas, or the sun. */
  static boolean isOwn(String source) {
    return Catalogues.standard()
        .find("fuels", source)
        .map(item -> item.kind().equals(OWN))
        .orElse(false);
  }

  /** Whether a flash point is stated for a product of such a strength by volume. */
  static boolean flashes(double strength) {
    return strength >= WEAKEST_THAT_FLASHES;
  }

  /** The strength by volume that a plan asks for, or else that of a usual fuel. */
  static double targetStrength(StillDesign still, EthanolCoefficients c) {
    Double asked = still.targetStrengthPercentVol();
    return asked == null ? c.fuelStrength() : asked / PERCENT;
  }

  private static EthanolEstimate.Target target(EthanolRun run) {
    if (run.beer().ethanolKg() <= 0) {
      return null;
    }
    double strength = targetStrength(run.still(), run.c());
    double feed = Charge.of(run.beer()).moleFraction();
    double distillate = Alcoholometry.moleFractionOfVolume(strength);
    if (feed >= distillate) {
      return new EthanolEstimate.Target(PERCENT * strength, 0, 0, 0.0);
    }
    double stripped = Alcoholometry.moleFractionOfVolume(run.c().columnEndStrength());
    double bottoms =
        ColumnStill.bottoms(distillate, feed, Math.min(stripped, feed), run.c().columnRecovery());
    double reflux = run.still().refluxRatio();
    double least = McCabeThiele.minimumReflux(distillate, feed, ColumnStill.SATURATED);
    double stages =
        reflux > least
            ? McCabeThiele.stages(distillate, feed, bottoms, reflux, ColumnStill.SATURATED)
            : Double.POSITIVE_INFINITY;
    return new EthanolEstimate.Target(
        PERCENT * strength,
        least,
        plates(McCabeThiele.minimumStages(distillate, bottoms)),
        Double.isFinite(stages) ? plates(stages) : null);
  }

  /** Plates of so many stages, of which the reboiler is one. */
  private static double plates(double stages) {
    return Math.max(0, stages - 1);
  }

  private static EthanolEstimate.StillageFigures stillage(EthanolRun run) {
    Matter stillage = run.stillage();
    double volume = stillage.freshKg() / run.c().stillageDensityKgL();
    double ethanol = Fermentation.litres(run.distilling().ethanolKg());
    return new EthanolEstimate.StillageFigures(
        stillage.freshKg(),
        volume,
        stillage.freshKg() > 0 ? stillage.totalSolidsKg() / stillage.freshKg() : null,
        stillage.codKg(),
        stillage.nitrogenKg(),
        stillage.phosphorusKg(),
        stillage.potassiumKg(),
        run.distilling().separation().leftEthanolKg(),
        run.makesFuel() ? volume / ethanol : null);
  }

  private static EthanolEstimate.Instead instead(EthanolRun run) {
    Matter organs = run.mash().organs();
    EthanolCoefficients c = run.c();
    double methane = Stoichiometry.methaneOfCodNm3(organs.codKg() * c.methaneShare());
    return new EthanolEstimate.Instead(
        methane,
        MethaneKinetics.methaneEnergyKWh(methane),
        organs.totalSolidsKg() * (1 - c.compostDryLoss()),
        organs.nitrogenKg() * (1 - c.compostNitrogenLoss()),
        organs.phosphorusKg(),
        organs.potassiumKg());
  }
}
