package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.Marshlight;
import org.marshlight.contract.Months;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.Step;
import org.marshlight.loop.Stage;

/** The steps of a tank's working, worked again, give the figures of its estimate. */
class DigesterWorkingTest {

  private static final PlanEstimate ESTIMATE = estimate();
  private static final DigesterEstimate.Annual ANNUAL = ESTIMATE.digester().annual();

  @Test
  void theStepsGiveTheFiguresOfTheEstimate() {
    assertThat(reworked("feed.methane-of-cod"))
        .isCloseTo(ANNUAL.methaneProducedNm3(), within(1e-9));
    assertThat(reworked("digester.pit-steady-loss")).isCloseTo(ANNUAL.groundLossWK(), within(1e-9));
  }

  /** Boulder and Broomfield lie 1689 m above the sea. */
  @Test
  void dissolvedMethaneIsThatOfThePressureAtTheSite() {
    // FAO-56 equation 7: 101.3 ((293 - 0.0065 z) / 293)^5.26 kPa
    double kPa = 101.3 * Math.pow((293 - 0.0065 * 1689) / 293, 5.26);
    Step pressure = step("climate.atmospheric-pressure");
    assertThat(pressure.value()).isCloseTo(kPa, within(0.01));
    double methaneShare = ESTIMATE.digester().gas().methaneFraction();
    assertThat(step("digester.dissolved-methane").inputs().get("partialPressurePa"))
        .isCloseTo(1000 * kPa * methaneShare, withinPercentage(0.2));
  }

  /** Month by month at its own temperature, with the pressure and oversaturation of the steps. */
  @Test
  void dissolvedMethaneOfTheYearFollowsFromTheSteps() {
    Step equilibrium = step("digester.dissolved-methane");
    Step outflow = step("digester.methane-in-outflow");
    double kg = 0;
    for (int month = 0; month < Months.COUNT; month++) {
      double mgL =
          FormulaBook.standard()
              .evaluate(
                  equilibrium.formula(),
                  Map.of(
                      "temperatureC",
                      ESTIMATE.digester().monthly().liquorTemperatureC().get(month),
                      "partialPressurePa",
                      equilibrium.inputs().get("partialPressurePa")));
      double leaving =
          FormulaBook.standard()
              .evaluate(
                  outflow.formula(),
                  Map.of(
                      "equilibriumMgL",
                      mgL,
                      "oversaturation",
                      outflow.inputs().get("oversaturation")));
      kg += leaving * ESTIMATE.digester().effluent().volumeM3().get(month) / 1000;
    }
    // 16.043 kg/kmol and 22.414 m3/kmol (CODATA)
    assertThat(kg / 16.043 * 22.414).isCloseTo(ANNUAL.methaneDissolvedNm3(), withinPercentage(1));
  }

  private static double reworked(String formula) {
    Step step = step(formula);
    return FormulaBook.standard().evaluate(step.formula(), step.inputs());
  }

  private static Step step(String formula) {
    List<Step> steps =
        ESTIMATE.working().stream()
            .filter(working -> working.stage() == Stage.DIGESTER)
            .flatMap(working -> working.steps().stream())
            .filter(step -> step.formula().equals(formula))
            .toList();
    assertThat(steps).as(formula).hasSize(1);
    return steps.get(0);
  }

  private static PlanEstimate estimate() {
    PlanDocument document = PlanDocument.read(SamplePlans.request("digester-with-working"));
    return Marshlight.estimate(
            new Marshlight.Request(document.plan(), Stage.DIGESTER, true, document.sha256()))
        .estimate();
  }
}
