package org.marshlight.loop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Glass whose azimuth is not given faces the equator, in both hemispheres. */
class GlassFacingTest {

  @ParameterizedTest
  @CsvSource({"christchurch, 0, 180", "burlington, 180, 0"})
  void glassWithoutAzimuthFacesTheEquator(String station, double sunny, double shady) {
    PlanBuilder plan = PlanBuilder.at(station).people(4).tank(5).glass(6);
    double byDefault = meanLiquorC(plan);
    assertThat(byDefault).isEqualTo(meanLiquorC(plan.facing(sunny)));
    assertThat(byDefault).isGreaterThan(meanLiquorC(plan.facing(shady)) + 0.5);
  }

  private static double meanLiquorC(PlanBuilder builder) {
    Plan plan = builder.build();
    PreparedSite site = PreparedSite.of(plan, LoopModel.coefficients(plan));
    return LoopModel.run(plan, Stage.DIGESTER, site, LoopModel.coefficients(plan))
        .digester()
        .estimate()
        .annual()
        .meanLiquorTemperatureC();
  }
}
