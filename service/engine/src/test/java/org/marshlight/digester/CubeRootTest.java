package org.marshlight.digester;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Against the correctly rounded root of the Java library. */
class CubeRootTest {

  @Test
  void rootsOfItsWholeRangeAgreeWithTheLibrary() {
    for (double x = CubeRoot.LEAST; x < 1 / CubeRoot.LEAST; x *= 1.0037) {
      assertThat(CubeRoot.of(x) / StrictMath.cbrt(x)).as("of %s", x).isCloseTo(1, within(1.3e-8));
    }
  }
}
