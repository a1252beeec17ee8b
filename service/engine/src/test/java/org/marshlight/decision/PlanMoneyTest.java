package org.marshlight.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.marshlight.contract.RecordOf;
import org.marshlight.decision.Verdict.Component;
import org.marshlight.digester.GasPurpose;
import org.marshlight.digester.TankYears;
import org.marshlight.economy.AppraisalEstimate;
import org.marshlight.economy.CapitalDesign;
import org.marshlight.economy.PlanPart;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.loop.LoopModel;
import org.marshlight.loop.LoopRun;
import org.marshlight.loop.Plan;
import org.marshlight.loop.PlanBuilder;
import org.marshlight.loop.PreparedSite;
import org.marshlight.loop.Stage;

/**
 * The money of an invented homestead, worked by hand from its physical figures: what is paid, what
 * is saved in each year, what is left of the budget.
 */
class PlanMoneyTest {

  private static final Map<PlanPart, Double> COSTS =
      Map.of(
          PlanPart.TANK, 1500.0,
          PlanPart.COVER, 400.0,
          PlanPart.GAS, 700.0,
          PlanPart.BEDS, 900.0,
          PlanPart.FUEL, 650.0,
          PlanPart.COMPOST, 120.0);

  private static final Map<PlanPart, Component> JUDGED =
      Map.of(
          PlanPart.COVER, Component.GLASS,
          PlanPart.GAS, Component.GAS_CAPTURE,
          PlanPart.BEDS, Component.BEDS,
          PlanPart.FUEL, Component.FUEL_ALCOHOL,
          PlanPart.COMPOST, Component.COMPOST);

  private static final double SUM = 4270;
  private static final double BUDGET = 5000;
  private static final double SEWAGE_COST = 500;
  private static final double SEWAGE_YEARLY_COST = 40;
  private static final double CARE = 60;
  private static final double FUEL_PRICE = 0.12;
  private static final double ALCOHOL_PRICE = 0.2;
  private static final double STILL_FUEL_PRICE = 0.03;
  private static final double PER_DOLLAR = 0.9;
  private static final double RATE = 0.05;
  private static final double GROWTH = 0.02;
  private static final int LIFE = 15;

  private static final PlanBuilder HOMESTEAD =
      PlanBuilder.homestead()
          .baseline("sewageCost", SEWAGE_COST, "sewageYearlyCost", SEWAGE_YEARLY_COST)
          .money(
              "currency",
              "EUR",
              "capital",
              capital(),
              "yearlyCare",
              CARE,
              "fuelPricePerKWh",
              FUEL_PRICE,
              "alcoholPricePerKWh",
              ALCOHOL_PRICE,
              "stillFuelPricePerKWh",
              STILL_FUEL_PRICE,
              "currencyPerDollar",
              PER_DOLLAR,
              "lifeYears",
              (double) LIFE,
              "discountRate",
              RATE,
              "fuelPriceGrowth",
              GROWTH,
              "budget",
              BUDGET);

  private static final CoefficientSet SET = LoopModel.coefficients(HOMESTEAD.build());
  private static final PreparedSite SITE = PreparedSite.of(HOMESTEAD.build(), SET);

  /** Shared, since no money changes what a tank does. */
  private static final TankYears TANKS = new TankYears();

  private static final LoopRun RUN = LoopModel.run(HOMESTEAD.build(), Stage.LOOP, SITE, SET, TANKS);
  private static final Decision DECISION = decide(HOMESTEAD);

  private static CapitalDesign capital() {
    return RecordOf.record(
        CapitalDesign.class,
        "tank",
        COSTS.get(PlanPart.TANK),
        "cover",
        COSTS.get(PlanPart.COVER),
        "gas",
        COSTS.get(PlanPart.GAS),
        "beds",
        COSTS.get(PlanPart.BEDS),
        "fuel",
        COSTS.get(PlanPart.FUEL),
        "compost",
        COSTS.get(PlanPart.COMPOST));
  }

  private static Decision decide(PlanBuilder builder) {
    synchronized (TANKS) {
      return VerdictModel.decide(builder.build(), RUN, SITE, SET, TANKS);
    }
  }

  @Test
  void whatIsPaidIsTheSumOfThePartsLessWhatWouldBePaidAnyway() {
    MoneyEstimate money = DECISION.money();
    assertThat(money.credited()).isEqualTo(SEWAGE_COST);
    assertThat(money.sunk()).isZero();
    assertThat(money.costsNotGiven()).isEmpty();
    assertThat(money.appraisal().investment()).isCloseTo(SUM - SEWAGE_COST, within(1e-9));
    assertThat(money.budgetLeft()).isCloseTo(BUDGET - SUM, within(1e-9));
  }

  @Test
  void aYearSavesTheFuelThatTheGasAndTheAlcoholReplace() {
    double burnedKWh =
        RUN.digester().estimate().gas().uses().stream()
            .filter(use -> use.use() == GasPurpose.COOKING)
            .mapToDouble(use -> use.usedKWh())
            .sum();
    double displacedKWh =
        burnedKWh
            * SET.value("decision.burner-efficiency")
            / SET.value("fuels.lpg.stove-efficiency");
    double alcoholKWh = RUN.ethanol().estimate().annual().fuelEnergyKWh();
    double firedKWh = RUN.ethanol().estimate().heat().cutOrBoughtKWh();
    double fertiliserUsd = RUN.compost().estimate().land().fertiliserWorthUsd();
    AppraisalEstimate appraisal = DECISION.money().appraisal();

    assertThat(burnedKWh).isPositive();
    assertThat(firedKWh).isPositive();
    assertThat(appraisal.yearlyEnergySaving())
        .isCloseTo(FUEL_PRICE * displacedKWh + ALCOHOL_PRICE * alcoholKWh, within(1e-6));
    assertThat(appraisal.yearlyOtherSaving())
        .isCloseTo(PER_DOLLAR * fertiliserUsd + SEWAGE_YEARLY_COST, within(1e-9));
    assertThat(appraisal.yearlyCost()).isCloseTo(CARE + STILL_FUEL_PRICE * firedKWh, within(1e-9));
  }

  @Test
  void valueAndYearsAreThePaymentsWrittenOut() {
    MoneyEstimate money = DECISION.money();
    AppraisalEstimate appraisal = money.appraisal();
    double value = -appraisal.investment();
    for (int year = 1; year <= LIFE; year++) {
      double net =
          appraisal.yearlyEnergySaving() * Math.pow(1 + GROWTH, year)
              + appraisal.yearlyOtherSaving()
              - appraisal.yearlyCost();
      value += net / Math.pow(1 + RATE, year);
      MoneyEstimate.Year told = money.years().get(year - 1);
      assertThat(told.year()).isEqualTo(year);
      assertThat(told.net()).isCloseTo(net, within(1e-9));
      assertThat(told.cumulative()).isCloseTo(value, within(1e-8));
    }
    assertThat(appraisal.netPresentValue()).isCloseTo(value, within(1e-8));
    assertThat(money.conventions().get(0).netPresentValue()).isCloseTo(value, within(1e-8));
  }

  @Test
  void growingFuelPricesRaiseTheValueOfThePlanAndOfItsGas() {
    Decision level = decide(HOMESTEAD.moneyField("fuelPriceGrowth", 0.0));
    Decision steep = decide(HOMESTEAD.moneyField("fuelPriceGrowth", 0.06));
    assertThat(DECISION.money().appraisal().netPresentValue())
        .isBetween(
            level.money().appraisal().netPresentValue() + 1,
            steep.money().appraisal().netPresentValue() - 1);
    assertThat(judged(DECISION, Component.GAS_CAPTURE).netPresentValue())
        .isBetween(
            judged(level, Component.GAS_CAPTURE).netPresentValue() + 1,
            judged(steep, Component.GAS_CAPTURE).netPresentValue() - 1);
  }

  @ParameterizedTest
  @EnumSource(PlanPart.class)
  void aPartThatIsOwnedIsNotChargedAgain(PlanPart part) {
    Decision owned = decide(HOMESTEAD.moneyField("owned", List.of(part)));
    double cost = COSTS.get(part);
    assertThat(owned.money().sunk()).isEqualTo(cost);
    assertThat(owned.money().budgetLeft()).isCloseTo(BUDGET - SUM + cost, within(1e-9));
    assertThat(owned.money().appraisal().netPresentValue())
        .isCloseTo(DECISION.money().appraisal().netPresentValue() + cost, within(1e-8));
    assertThat(owned.money().appraisal().expectedNetPresentValue())
        .isCloseTo(DECISION.money().appraisal().expectedNetPresentValue() + cost, within(1e-8));
    assertThat(owned.materials())
        .isEqualTo(DECISION.materials().stream().filter(needed -> needed.part() != part).toList());
  }

  @ParameterizedTest
  @EnumSource(
      value = PlanPart.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"TANK"})
  void theVerdictOnAnOwnedPartCountsItsCostAsSunk(PlanPart part) {
    Component component = JUDGED.get(part);
    Decision owned = decide(HOMESTEAD.moneyField("owned", List.of(part)));
    assertThat(judged(DECISION, component).investment()).isEqualTo(COSTS.get(part));
    assertThat(judged(owned, component).investment()).isZero();
    assertThat(judged(owned, component).netPresentValue())
        .isCloseTo(judged(DECISION, component).netPresentValue() + COSTS.get(part), within(1e-8));
  }

  private static AppraisalEstimate judged(Decision decision, Component component) {
    return decision.verdicts().stream()
        .filter(verdict -> verdict.component() == component)
        .findFirst()
        .orElseThrow()
        .difference()
        .money();
  }

  /** No price makes up for alcohol that takes more energy than it gives. */
  @Test
  void alcoholThatTakesMoreEnergyThanItGivesIsNeverWorthIt() {
    Plan weak =
        PlanBuilder.at("managua")
            .givenHarvest("broadleaf-cattail", 200, 0.03)
            .fuelAlcohol()
            .money(
                "capital",
                RecordOf.record(CapitalDesign.class, "fuel", 10.0),
                "alcoholPricePerKWh",
                1000.0)
            .build();
    LoopRun run = LoopModel.run(weak, Stage.LOOP, SITE, SET);
    Verdict verdict =
        VerdictModel.verdicts(weak, run, SITE, SET).stream()
            .filter(v -> v.component() == Component.FUEL_ALCOHOL)
            .findFirst()
            .orElseThrow();
    assertThat(run.ethanol().estimate().annual().ethanolL()).isPositive();
    assertThat(run.ethanol().estimate().annual().netEnergyKWh()).isNegative();
    assertThat(verdict.difference().money().netPresentValue()).isPositive();
    assertThat(verdict.answer()).isEqualTo(Verdict.Worth.NO);
  }
}
