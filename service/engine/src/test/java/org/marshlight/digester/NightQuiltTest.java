package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.climate.ClimateYear;
import org.marshlight.climate.SymmetricYears;

/**
 * Night insulation lies over the glass from sunset to sunrise. At 85 degrees of latitude a night
 * lasts for months, and so does a day, which keeps the two apart.
 */
class NightQuiltTest {

  private static final ClimateYear POLAR = SymmetricYears.at(85);

  /** From November to January the sun stays down, from May to July it stays up. */
  private static final List<Integer> NIGHT = List.of(10, 11, 0);

  private static final List<Integer> DAY = List.of(4, 5, 6);

  @Test
  void theYearHasAPolarNightAndAPolarDay() {
    assertThat(hoursOfSun(0, 31)).isZero();
    assertThat(hoursOfSun(304, 365)).isZero();
    assertThat(hoursOfSun(120, 212)).isEqualTo(92 * 24);
  }

  private static long hoursOfSun(int firstDay, int lastDay) {
    return IntStream.range(24 * firstDay, 24 * lastDay)
        .filter(hour -> POLAR.extraterrestrialWM2()[hour] > 0)
        .count();
  }

  @Test
  void itHoldsHeatBackInThePolarNightAlone() {
    DigesterEstimate open = under(POLAR, 0);
    DigesterEstimate quilted = under(POLAR, 3);
    assertThat(lossPerKelvin(quilted, NIGHT)).isLessThan(0.7 * lossPerKelvin(open, NIGHT));
    assertThat(lossPerKelvin(quilted, DAY)).isGreaterThan(0.98 * lossPerKelvin(open, DAY));
  }

  /** Heat lost through the top for each kelvin by which the lid is warmer than the air. */
  private static double lossPerKelvin(DigesterEstimate tank, List<Integer> months) {
    double loss = 0;
    double kelvins = 0;
    for (int month : months) {
      loss -= tank.heatFlowsKWh().topToAir().get(month) + tank.heatFlowsKWh().topToSky().get(month);
      kelvins +=
          tank.monthly().lidTemperatureC().get(month)
              - tank.monthly().ambientTemperatureC().get(month);
    }
    return loss / kelvins;
  }

  @ParameterizedTest
  @ValueSource(strings = {"burlington", "el-paso", "christchurch"})
  void itKeepsATankWarmerAndColdNightsFromCoolingIt(String station) {
    ClimateYear year = TankFixture.year(station);
    DigesterEstimate open = under(year, 0);
    DigesterEstimate quilted = under(year, 1);
    assertThat(quilted.annual().meanLiquorTemperatureC())
        .isGreaterThan(open.annual().meanLiquorTemperatureC());
    assertThat(quilted.annual().lowestLiquorTemperatureC())
        .isGreaterThan(open.annual().lowestLiquorTemperatureC());
    assertThat(quilted.monthly().sunOnTopKWh()).isEqualTo(open.monthly().sunOnTopKWh());
  }

  private static DigesterEstimate under(ClimateYear year, double nightM2KW) {
    return TankFixture.run(
            year,
            TankFixture.tank(4, 3),
            TankFixture.glass(5, 1, nightM2KW),
            4,
            TankFixture.wastes(4))
        .estimate();
  }
}
