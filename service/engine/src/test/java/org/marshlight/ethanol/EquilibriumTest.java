package org.marshlight.ethanol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EquilibriumTest {

  @Test
  void theCurveOfTheStillsPassesTheMeasuredPoints() {
    for (double[] point : MeasuredEquilibrium.POINTS) {
      assertThat(McCabeThiele.vapourFraction(point[0]))
          .as("x = %s", point[0])
          .isCloseTo(point[1], within(2e-6));
    }
  }

  @Test
  void theCurveRisesAndCrossesTheDiagonalOnce() {
    double before = 0;
    int crossings = 0;
    double azeotrope = EquilibriumCurve.STANDARD.azeotrope();
    for (int i = 1; i <= 10_000; i++) {
      double x = i / 10_000.0;
      double y = McCabeThiele.vapourFraction(x);
      assertThat(y).as("x = %s", x).isGreaterThan(before);
      crossings += y > x == x < azeotrope ? 0 : 1;
      before = y;
    }
    assertThat(crossings).isLessThanOrEqualTo(1);
    assertThat(azeotrope).isCloseTo(0.8943, within(1e-4));
  }

  @Test
  void liquidAndVapourAreInverse() {
    for (int i = 1; i < 1000; i++) {
      double x = i / 1000.0;
      assertThat(EquilibriumCurve.STANDARD.liquid(EquilibriumCurve.STANDARD.vapour(x)))
          .isCloseTo(x, within(1e-9));
    }
  }

  /**
   * What the stills leave out by reading the vapour at one atmosphere: at 80 kPa, some 2000 m up,
   * it is richer by less than a thirtieth of its ethanol, while liquids boil 5 to 7 K colder, which
   * the stills do follow.
   */
  @Test
  void twoThousandMetresUpChangeTheCurveByLittle() {
    for (double x = 0.005; x < 0.85; x += 0.005) {
      double colder =
          EthanolWaterEquilibrium.bubbleTemperatureC(x, 101.325)
              - EthanolWaterEquilibrium.bubbleTemperatureC(x, 80);
      double richer =
          EthanolWaterEquilibrium.vapourFraction(x, 80)
              / EthanolWaterEquilibrium.vapourFraction(x, 101.325);
      assertThat(colder).as("x = %s", x).isBetween(5.0, 7.0);
      assertThat(richer).as("x = %s", x).isBetween(1 - 1e-3, 1.0 + 1.0 / 30);
    }
  }

  @Test
  void lowerPressureBoilsColderAndMovesTheAzeotropeUp() {
    assertThat(EthanolWaterEquilibrium.bubbleTemperatureC(0.3, 90))
        .isLessThan(EthanolWaterEquilibrium.bubbleTemperatureC(0.3, 101.325));
    assertThat(EthanolWaterEquilibrium.azeotrope(60))
        .isGreaterThan(EthanolWaterEquilibrium.azeotrope(101.325));
  }
}
