package org.marshlight.decision;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.marshlight.contract.Months;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.decision.Verdict.Measure;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.economy.Discounting;
import org.marshlight.economy.FinanceCoefficients;
import org.marshlight.economy.PlanPart;

/** Judges the parts that are there for energy: gas capture, glass, night insulation, feeding. */
final class EnergyParts {

  static final String PER_M2 = "kW.h/(m2.a)";
  static final String PER_YEAR = "kW.h/a";

  private final Comparisons basis;
  private final Effects with;
  private final Sizes sizes;
  private final WorkEstimate work;
  private final PartMoney money;
  private final DecisionCoefficients thresholds;

  EnergyParts(Comparisons basis, Effects with, Sizes sizes, WorkEstimate work) {
    this.basis = basis;
    this.with = with;
    this.sizes = sizes;
    this.work = work;
    this.money = new PartMoney(basis, work);
    this.thresholds = basis.set().bind(DecisionCoefficients.class);
  }

  private DigesterEstimate tank() {
    return with.run().digester().estimate();
  }

  /** Gas capture; null without. */
  Verdict gasCapture() {
    if (with.run().digester() == null || sizes.gas() == null) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.gas(basis.plan()));
    Part part =
        new Part(
            Component.GAS_CAPTURE,
            null,
            with,
            without,
            money.energy(Component.GAS_CAPTURE, PlanPart.GAS, 1, with, without),
            basis,
            work.hoursOf(Component.GAS_CAPTURE));
    double useful = part.usefulGainKWh();
    part.because(
        "decision.gas-useful",
        "gasEnergyKWh",
        tank().annual().gasEnergyKWh(),
        "gasUsedKWh",
        tank().annual().gasUsedKWh(),
        "usefulKWh",
        useful,
        "share",
        thresholds.gasYes() > 0 ? useful / thresholds.gasYes() : 0,
        "threshold",
        thresholds.gasYes());
    if (tank().annual().cookingDemandMetFraction() != null) {
      part.because(
          "decision.cooking-met",
          "metPercent",
          Part.percent(tank().annual().cookingDemandMetFraction()),
          "worstPercent",
          Part.percent(
              Collections.min(
                  tank().monthly().cookingDemandMetFraction().stream()
                      .filter(Objects::nonNull)
                      .toList())));
    }
    double electricity =
        with.service().annualDisplacedElectricityKWh()
            - without.service().annualDisplacedElectricityKWh();
    if (electricity > 0) {
      part.because("decision.gas-electricity", "electricityKWh", electricity);
    }
    part.because("decision.gas-without", "vented", tank().annual().methaneNm3());
    stillWorking(part);
    pressure(part);
    return part.byMoneyOr(
        new Measure(useful, thresholds.gasYes(), thresholds.gasMarginal(), PER_YEAR));
  }

  private void stillWorking(Part part) {
    double years = basis.money().lifeYears();
    part.because(
        "decision.still-working",
        "failingPercent",
        Part.percent(basis.set().bind(FinanceCoefficients.class).failingShare()),
        "years",
        years,
        "workingPercent",
        Part.percent(
            Discounting.stillWorking(
                basis.set().bind(FinanceCoefficients.class).failingShare(), years)),
        "expectedKWh",
        part.usefulGainKWh()
            * Discounting.uniform(
                Discounting.rateWithFailure(
                    0, basis.set().bind(FinanceCoefficients.class).failingShare()),
                years)
            / years);
  }

  private void pressure(Part part) {
    Double pressure = basis.plan().gas().pressureKPa();
    if (pressure == null) {
      part.notBefore("decision.pressure-not-shown-safe");
    } else if (pressure > thresholds.pressureLimit()) {
      part.notBefore(
          "decision.pressure-above-standard",
          "pressureKPa",
          pressure,
          "limitKPa",
          thresholds.pressureLimit());
    }
  }

  /** Glass; null without. */
  Verdict glass() {
    if (with.run().digester() == null || !sizes.glazed()) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.glass(basis.plan()));
    double share = sizes.quilted() ? 1 - thresholds.quiltCostShare() : 1;
    Part part =
        new Part(
            Component.GLASS,
            null,
            with,
            without,
            money.energy(Component.GLASS, PlanPart.COVER, share, with, without),
            basis,
            work.hoursOf(Component.GLASS));
    needsGas(part, "decision.glass-needs-gas");
    double perM2 = part.usefulGainKWh() / sizes.glassM2();
    part.because("decision.glass-useful", "gainKWh", part.usefulGainKWh(), "perM2", perM2)
        .because(
            "decision.glass-warms",
            "withoutC",
            without.run().digester().estimate().annual().meanLiquorTemperatureC(),
            "withC",
            tank().annual().meanLiquorTemperatureC())
        .because(
            "decision.glass-as-heater",
            "heaterKWh",
            Alternatives.waterHeaterKWhM2(basis, sizes) * sizes.glassM2());
    if (tank().annual().stagnationTemperatureC() != null) {
      part.provided("decision.stagnation", "stagnationC", tank().annual().stagnationTemperatureC());
    }
    return part.byMoneyOr(
        new Measure(perM2, thresholds.glassYes(), thresholds.glassMarginal(), PER_M2));
  }

  private void needsGas(Part part, String code) {
    if (sizes.gas() == null) {
      part.failing(code);
    }
  }

  /** Night insulation; null without. */
  Verdict nightInsulation() {
    if (with.run().digester() == null || !sizes.quilted()) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.nightInsulation(basis.plan()));
    Part part =
        new Part(
            Component.NIGHT_INSULATION,
            null,
            with,
            without,
            money.energy(
                Component.NIGHT_INSULATION,
                PlanPart.COVER,
                thresholds.quiltCostShare(),
                with,
                without),
            basis,
            work.hoursOf(Component.NIGHT_INSULATION));
    needsGas(part, "decision.quilt-needs-gas");
    double perM2 = part.usefulGainKWh() / sizes.glassM2();
    part.because("decision.quilt-useful", "gainKWh", part.usefulGainKWh(), "perM2", perM2);
    return part.byMoneyOr(
        new Measure(perM2, thresholds.quiltYes(), thresholds.quiltMarginal(), PER_M2));
  }

  /** Feeding wastes beside the household's water; null where nothing is fed. */
  Verdict coFeeding() {
    if (with.run().digester() == null
        || basis.plan().feeds() == null
        || basis.plan().feeds().stream().noneMatch(feed -> feed.freshKgPerDay() > 0)) {
      return null;
    }
    Effects without = basis.effects(PlanWithout.feeds(basis.plan()));
    Part part =
        new Part(
            Component.CO_FEEDING,
            null,
            with,
            without,
            money.coFeeding(with, without),
            basis,
            work.hoursOf(Component.CO_FEEDING));
    needsGas(part, "decision.feeding-needs-gas");
    Verdict gas = gasCapture();
    if (gas != null && gas.answer() == Verdict.Worth.NO) {
      part.failing("decision.feeding-gas-not-worth");
    }
    failsBecauseOfFeeding(part, without);
    part.because(
            "decision.feeding-useful",
            "gainKWh",
            part.usefulGainKWh(),
            "withKWh",
            with.service().annualUsefulKWh(),
            "withoutKWh",
            without.service().annualUsefulKWh())
        .because(
            "decision.feeding-outflow",
            "withBodKg",
            Months.sum(with.run().digester().effluent().bod5Kg()),
            "withoutBodKg",
            Months.sum(without.run().digester().effluent().bod5Kg()),
            "landPhosphorusKg",
            without.land().phosphorusKg() - with.land().phosphorusKg());
    return part.byMoneyOr(
        new Measure(
            part.usefulGainKWh(), thresholds.feedingYes(), thresholds.feedingMarginal(), PER_YEAR));
  }

  /** Limits of the tank that are kept without the feeds and broken with them. */
  private void failsBecauseOfFeeding(Part part, Effects without) {
    List<String> broken = broken(without.run().digester().estimate());
    for (DigesterEstimate.Check check : tank().stability()) {
      if (!check.kept() && check.value() != null && !broken.contains(check.code())) {
        part.failing(
            "decision.feeding-breaks",
            "check",
            check.code().substring(check.code().indexOf('.') + 1),
            "value",
            check.value(),
            "limit",
            check.limit(),
            "month",
            check.month());
      }
    }
  }

  private static List<String> broken(DigesterEstimate tank) {
    return tank.stability().stream()
        .filter(check -> !check.kept())
        .map(DigesterEstimate.Check::code)
        .toList();
  }
}
