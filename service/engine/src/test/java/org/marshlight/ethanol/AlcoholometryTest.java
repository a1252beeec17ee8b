package org.marshlight.ethanol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AlcoholometryTest {

  /**
   * The printed coefficients worked apart from the engine, in other code; the three temperatures at
   * each strength need every row of the mixed coefficients.
   */
  @ParameterizedTest
  @CsvSource({
    "0.05, 990.984, 989.378, 983.054",
    "0.10, 983.930, 981.848, 974.778",
    "0.20, 972.519, 968.607, 958.515",
    "0.30, 959.734, 953.784, 940.498",
    "0.40, 942.377, 935.145, 919.892",
    "0.50, 921.589, 913.771, 897.440",
    "0.60, 899.235, 891.098, 874.106",
    "0.70, 875.991, 867.611, 850.219",
    "0.80, 851.933, 843.386, 825.683",
    "0.90, 826.488, 817.883, 800.207",
    "0.956, 811.020, 802.428, 785.034"
  })
  void densityIsThatOfTheGeneralFormula(
      double massFraction, double at10, double at20, double at40) {
    assertThat(Alcoholometry.densityKgM3(massFraction, 10)).isCloseTo(at10, within(6e-4));
    assertThat(Alcoholometry.densityKgM3(massFraction, 20)).isCloseTo(at20, within(6e-4));
    assertThat(Alcoholometry.densityKgM3(massFraction, 40)).isCloseTo(at40, within(6e-4));
  }

  @Test
  void strengthByVolumeAndByMassAreInverse() {
    for (int percent = 0; percent <= 100; percent++) {
      double volumeFraction = percent / 100.0;
      double massFraction = Alcoholometry.massFraction(volumeFraction);
      assertThat(Alcoholometry.volumeFraction(massFraction))
          .isCloseTo(volumeFraction, within(1e-11));
      assertThat(massFraction).isLessThanOrEqualTo(volumeFraction);
    }
  }
}
