package org.marshlight.ethanol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RayleighTest {

  /** An independent integration, in small bits of vapour, over the published equilibrium table. */
  @ParameterizedTest
  @CsvSource({
    "0.05, 0.019",
    "0.10, 0.019",
    "0.20, 0.019",
    "0.20, 0.08",
    "0.40, 0.05",
    "0.50, 0.25",
    "0.60, 0.30"
  })
  void theBatchAgreesWithTheMeasuredTableWithinOnePercent(double charge, double end) {
    double left = 1;
    double x = charge;
    double dx = (charge - end) / 20_000;
    for (int i = 0; i < 20_000; i++) {
      double middle = x - dx / 2;
      left -= left * dx / (MeasuredEquilibrium.vapour(middle) - middle);
      x -= dx;
    }
    double distillate = (charge - left * end) / (1 - left);
    assertThat(Rayleigh.residueFraction(charge, end)).isCloseTo(left, within(0.01 * left));
    assertThat(Rayleigh.distillateMoleFraction(charge, end))
        .isCloseTo(distillate, within(0.01 * distillate));
  }

  @Test
  void theEndAndTheResidueAreInverse() {
    double end = Rayleigh.endMoleFraction(0.1, 0.3);
    assertThat(Rayleigh.residueFraction(0.1, end)).isCloseTo(0.7, within(1e-9));
  }

  @Test
  void distillingFurtherLeavesLessAndGivesWeakerSpirit() {
    double left = 1;
    double strength = 1;
    for (double end = 0.09; end > 0.0005; end *= 0.8) {
      assertThat(Rayleigh.residueFraction(0.1, end)).isLessThan(left);
      assertThat(Rayleigh.distillateMoleFraction(0.1, end)).isLessThan(strength);
      left = Rayleigh.residueFraction(0.1, end);
      strength = Rayleigh.distillateMoleFraction(0.1, end);
    }
  }
}
