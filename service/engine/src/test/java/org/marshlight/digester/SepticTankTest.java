package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds an unwarmed tank with sewage alone to what was measured on septic tanks. */
class SepticTankTest {

  /** Stations whose buried tank runs at a mean of 15 to 20 Cel. */
  @ParameterizedTest
  @ValueSource(strings = {"seattle-tacoma", "christchurch", "boulder-broomfield", "des-moines"})
  void gasPhaseMethaneIsThatOfMeasuredTanks(String climate) {
    DigesterEstimate estimate = sewageOnly(climate).estimate();
    assertThat(estimate.annual().meanLiquorTemperatureC()).isBetween(15.0, 20.0);
    // Diaz-Valbuena 2011: 10.7 to 11 g a person and day, single sites 8.4 to 13.4
    assertThat(estimate.annual().methaneGPerPersonDay()).isBetween(5.0, 18.0);
  }

  @Test
  void outflowIsThatOfMeasuredTanks() {
    // California State Water Resources Control Board: raw 450 and outflow 185 mg/L BOD5, TN 70
    DigesterEstimate.Effluent effluent = sewageOnly("sacramento-executive").estimate().effluent();
    double bod5 =
        effluent.bod5MgL().stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double nitrogen =
        effluent.totalNitrogenMgL().stream()
            .mapToDouble(Double::doubleValue)
            .average()
            .orElseThrow();
    assertThat(bod5).isBetween(120.0, 240.0);
    assertThat(nitrogen).isCloseTo(70, within(20.0));
  }

  @Test
  void sludgeGathersAsMeasured() {
    // Gray 1995: 85 L a person and year on average; Irish tanks: 1 to 10 kg dry a person and year
    DigesterEstimate.Sludge sludge = sewageOnly("christchurch").estimate().sludge();
    assertThat(sludge.pumpedDryKgPerYear() / 4).isBetween(1.0, 10.0);
    assertThat(sludge.pumpedM3PerYear() * 1000 / 4).isBetween(60.0, 180.0);
  }

  private static DigesterOutcome sewageOnly(String climate) {
    return TankFixture.run(
        TankFixture.year(climate),
        TankFixture.tank(4, 3),
        TankFixture.earth(),
        4,
        TankFixture.wastes(4));
  }
}
