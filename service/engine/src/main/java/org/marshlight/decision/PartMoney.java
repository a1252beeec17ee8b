package org.marshlight.decision;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.economy.Appraisal;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.economy.BaselineDesign;
import org.marshlight.economy.MoneyDesign;
import org.marshlight.economy.PlanPart;
import org.marshlight.economy.YearlyMoney;
import org.marshlight.ethanol.EthanolEstimate;
import org.marshlight.ethanol.HeatSource;
import org.marshlight.loop.LoopRun;
import org.marshlight.wetland.WaterUse;
import org.marshlight.wetland.WetlandEstimate;

/** What parts of a plan cost, save and come to in money. */
final class PartMoney {

  private final Comparisons basis;
  private final MoneyDesign money;
  private final WorkEstimate work;

  PartMoney(Comparisons basis, WorkEstimate work) {
    this.basis = basis;
    this.money = basis.money();
    this.work = work;
  }

  /** What a saving of displaced fuel comes to; null where the cost or the price is not given. */
  AppraisalEstimate energy(
      Component component, PlanPart part, double share, Effects with, Effects without) {
    Double cost = money.toPay(part);
    if (cost == null || !priced(with)) {
      return null;
    }
    return Appraisal.of(
        cost * share + basis.charged(),
        new YearlyMoney(energySaving(with, without), 0, care(part, share) + worth(component)),
        with.service().annualUsefulKWh() - without.service().annualUsefulKWh(),
        basis.terms());
  }

  /** What feeding comes to: nothing is built for it but what a changed plan charges. */
  AppraisalEstimate coFeeding(Effects with, Effects without) {
    if (!priced(with)) {
      return null;
    }
    return Appraisal.of(
        basis.charged(),
        new YearlyMoney(energySaving(with, without), feedsOtherwise(), worth(Component.CO_FEEDING)),
        with.service().annualUsefulKWh() - without.service().annualUsefulKWh(),
        basis.terms());
  }

  /** What wastes that are fed would cost a year without the plan. */
  double feedsOtherwise() {
    return yearlyCost(WasteElsewhere.fed(basis.plan(), basis.set()));
  }

  /** What wastes that are composted, and not fed too, would cost a year without the plan. */
  double ingredientsOtherwise() {
    Set<String> fed =
        WasteElsewhere.fed(basis.plan(), basis.set()).stream()
            .map(WasteElsewhere::waste)
            .collect(Collectors.toSet());
    return yearlyCost(
        WasteElsewhere.composted(basis.plan(), basis.baseline(), basis.set()).stream()
            .filter(waste -> !fed.contains(waste.waste()))
            .toList());
  }

  private double yearlyCost(List<WasteElsewhere> wastes) {
    return new FeedFates(wastes, basis.baseline(), basis.set()).yearlyCost();
  }

  /**
   * Whether what the gas takes the place of has a price: that of electricity where it spares
   * nothing else, that of the displaced fuel otherwise.
   */
  private boolean priced(Effects with) {
    return with.service().sparesElectricityAlone()
        ? money.electricityPrice() != null
        : money.fuelPricePerKWh() != null;
  }

  private double energySaving(Effects with, Effects without) {
    return gasSaving(with.service()) - gasSaving(without.service());
  }

  /** What the gas saves a year in fuel and electricity, each as far as it has a price. */
  double gasSaving(GasService service) {
    return orNought(money.fuelPricePerKWh()) * service.annualDisplacedFuelKWh()
        + orNought(money.electricityPrice()) * service.annualDisplacedElectricityKWh();
  }

  /** What a share of the beds comes to, soil absorption that they spare credited. */
  AppraisalEstimate beds(double share, LoopRun run) {
    Double cost = money.toPay(PlanPart.BEDS);
    if (cost == null) {
      return null;
    }
    return Appraisal.of(
        (cost - absorptionCredit(run)) * share,
        new YearlyMoney(0, 0, care(PlanPart.BEDS, share) + worth(Component.BEDS) * share),
        0,
        basis.terms());
  }

  /** Cost of the soil absorption that the beds make smaller or needless; nought if not given. */
  double absorptionCredit(LoopRun run) {
    Double perM2 = basis.baseline().soilAbsorptionPerM2();
    if (perM2 == null
        || run.wetland() == null
        || basis.baseline().sewage() == BaselineDesign.Sewage.SEWER
        || run.wetland().estimate().soilAbsorption().areaM2() == null) {
      return 0;
    }
    WetlandEstimate.SoilAbsorption soil = run.wetland().estimate().soilAbsorption();
    boolean stillNeeded = basis.plan().waterUse() == WaterUse.SOIL_ABSORPTION;
    double treated = stillNeeded && soil.treatedAreaM2() != null ? soil.treatedAreaM2() : 0;
    return perM2 * Math.max(0, soil.areaM2() - treated);
  }

  /** What fuel alcohol comes to; null where its cost or a price is not given. */
  AppraisalEstimate alcohol(LoopRun run) {
    Double cost = money.toPay(PlanPart.FUEL);
    if (cost == null || alcoholPrice() == null) {
      return null;
    }
    return Appraisal.of(
        cost,
        new YearlyMoney(
            alcoholSaving(run),
            0,
            stillCost(run) + care(PlanPart.FUEL, 1) + worth(Component.FUEL_ALCOHOL)),
        run.ethanol().estimate().annual().fuelEnergyKWh(),
        basis.terms());
  }

  /** Worth of a kWh of alcohol: as stated, or that of the displaced fuel for the same heat. */
  private Double alcoholPrice() {
    if (money.alcoholPricePerKWh() != null) {
      return money.alcoholPricePerKWh();
    }
    return money.fuelPricePerKWh() == null
        ? null
        : Double.valueOf(
            money.fuelPricePerKWh()
                * basis.set().bind(UseEfficiencies.class).alcohol()
                / basis.displaced().stoveEfficiency());
  }

  /** What the alcohol saves a year; nought without it or its price. */
  double alcoholSaving(LoopRun run) {
    return run.ethanol() == null || alcoholPrice() == null
        ? 0
        : alcoholPrice() * run.ethanol().estimate().annual().fuelEnergyKWh();
  }

  /** What heat and electricity of mash and still cost a year, as far as they have a price. */
  double stillCost(LoopRun run) {
    if (run.ethanol() == null) {
      return 0;
    }
    EthanolEstimate.HeatFigures heat = run.ethanol().estimate().heat();
    return heat.cutOrBoughtKWh() * orNought(stillPrice(heat.source()))
        + heat.electricityKWh() * orNought(money.electricityPrice());
  }

  /** Price of what heats the still; electricity that drives it costs what electricity costs. */
  private Double stillPrice(String source) {
    return money.stillFuelPricePerKWh() == null && source.equals(HeatSource.ELECTRICITY)
        ? money.electricityPrice()
        : money.stillFuelPricePerKWh();
  }

  /** What compost comes to; null where its cost or the worth of fertiliser is not given. */
  AppraisalEstimate compost(LoopRun run) {
    Double cost = money.toPay(PlanPart.COMPOST);
    if (cost == null || money.perDollar() == null) {
      return null;
    }
    return Appraisal.of(
        cost,
        new YearlyMoney(
            0,
            fertiliser(run) + ingredientsOtherwise(),
            care(PlanPart.COMPOST, 1) + worth(Component.COMPOST)),
        0,
        basis.terms());
  }

  /** Worth of fertiliser that compost stands in for; nought where its price is not known. */
  double fertiliser(LoopRun run) {
    return run.compost() == null
        ? 0
        : run.compost().estimate().land().fertiliserWorthUsd() * orNought(money.perDollar());
  }

  /** Upkeep of a part: all of it, shared as the costs of the parts. */
  private double care(PlanPart part, double share) {
    if (money.yearlyCare() == null || money.capital() == null) {
      return 0;
    }
    Double cost = money.capital().of(part);
    double sum = money.capital().sum();
    return cost == null || sum <= 0 ? 0 : money.yearlyCare() * cost / sum * share;
  }

  private double worth(Component component) {
    return orNought(money.hourValue()) * work.hoursOf(component);
  }

  static double orNought(Double value) {
    return value == null ? 0 : value;
  }
}
