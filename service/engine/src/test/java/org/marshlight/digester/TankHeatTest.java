package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.contract.Months;

/** What must hold of a tank's warmth. */
class TankHeatTest {

  @ParameterizedTest
  @ValueSource(strings = {"managua", "minneapolis-saint-paul", "christchurch"})
  void heatFlowsSumToTheChangeOfStoredHeat(String climate) {
    for (CoverDesign cover :
        List.of(
            TankFixture.earth(), bare(), TankFixture.glass(5, 1, 0), TankFixture.glass(5, 2, 1))) {
      DigesterEstimate estimate = run(climate, cover);
      DigesterEstimate.HeatFlows flows = estimate.heatFlowsKWh();
      for (int month = 0; month < Months.COUNT; month++) {
        double sum = 0;
        double gross = 0;
        for (List<Double> flow :
            List.of(
                flows.absorbedSun(),
                flows.topToAir(),
                flows.topToSky(),
                flows.enclosure(),
                flows.coverSoil(),
                flows.ground(),
                flows.inflow())) {
          sum += flow.get(month);
          gross += Math.abs(flow.get(month));
        }
        assertThat(sum).isCloseTo(estimate.storedHeatChangeKWh().get(month), within(1e-9 * gross));
      }
    }
  }

  @Test
  void theYearEndsAsItBegan() {
    double change =
        run("burlington", TankFixture.glass(4, 1, 0.5)).storedHeatChangeKWh().stream()
            .mapToDouble(Double::doubleValue)
            .sum();
    assertThat(change).isCloseTo(0, within(1e-3));
  }

  @Test
  void glassQuiltAndASecondPaneEachWarm() {
    double earth = mean(TankFixture.earth());
    double onePane = mean(TankFixture.glass(4, 1, 0));
    double quilt = mean(TankFixture.glass(4, 1, 1.5));
    double twoPanes = mean(TankFixture.glass(4, 2, 0));
    assertThat(onePane).isGreaterThan(earth);
    assertThat(quilt).isGreaterThan(onePane);
    assertThat(twoPanes).isGreaterThan(onePane);
  }

  private static double mean(CoverDesign cover) {
    return run("seattle-tacoma", cover).annual().meanLiquorTemperatureC();
  }

  private static CoverDesign bare() {
    return new CoverDesign(CoverKind.NONE, null, null, null, null, null, null, null);
  }

  private static DigesterEstimate run(String climate, CoverDesign cover) {
    return TankFixture.run(
            TankFixture.year(climate), TankFixture.tank(4, 3), cover, 4, TankFixture.wastes(4))
        .estimate();
  }
}
