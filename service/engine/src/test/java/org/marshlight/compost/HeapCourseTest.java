package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class HeapCourseTest {

  private static final HeatCoefficients C = Heaps.CENTRAL.bind(HeatCoefficients.class);

  @Test
  void withoutDecayTheHeapFollowsTheAir() {
    HeapCourse course =
        HeapCourse.of(new HeapCourse.Batch(300, 200, 1, 1e-9, 1.3, 3), Heaps.WARM, C);
    assertThat(course.peakC()).isCloseTo(24, within(1e-6));
    assertThat(course.above40Days()).isZero();
  }

  @Test
  void aHeapCoolsItselfBeforeItBoils() {
    HeapCourse course =
        HeapCourse.of(new HeapCourse.Batch(30_000, 20_000, 100, 12_000, 1.5, 3), Heaps.WARM, C);
    assertThat(course.peakC()).isBetween(60.0, 80.0);
    assertThat(course.above55Days()).isLessThanOrEqualTo(course.above40Days());
    assertThat(course.heatLawFraction()).isGreaterThan(1);
  }

  @Test
  void surfaceGrowsWithoutAJumpWhereTheHeapReachesItsHeight() {
    double full = 2 * Math.PI * Math.pow(1.3, 3) / 3;
    assertThat(HeapHeat.surfaceM2(full * (1 + 1e-9), 1.3))
        .isCloseTo(HeapHeat.surfaceM2(full * (1 - 1e-9), 1.3), within(1e-6));
    assertThat(HeapHeat.surfaceM2(3 * full, 1.3)).isGreaterThan(HeapHeat.surfaceM2(full, 1.3));
  }

  @Test
  void heapsAreBuiltInAutumnOnEitherHalfOfTheEarth() {
    assertThat(Heaps.HILLS.autumnMonth()).isEqualTo(9);
    CompostSite south =
        new CompostSite(
            List.of(19.3, 18.8, 14.4, 9.1, 3.2, -1.4, -2.5, -0.4, 4.2, 9.0, 13.8, 17.4));
    assertThat(south.autumnMonth()).isEqualTo(3);
    assertThat(Heaps.WARM.autumnMonth()).isZero();
  }

  @Test
  void theTablesAreAsNearToTheFormulasAsTheySay() {
    double greatest = HeapHeat.decayRatePerDay(65, 1);
    for (double temperature = -60; temperature <= 89.9; temperature += 0.037) {
      double speed = HeapHeat.decayRatePerDay(temperature, 1);
      double humidity = HeapHeat.saturatedHumidity(temperature);
      assertThat(HeapCourse.WARMING.at(temperature))
          .isCloseTo(speed, within(temperature <= 75 ? 4e-5 * speed : 0.006 * greatest));
      assertThat(HeapCourse.HUMIDITY.at(temperature)).isCloseTo(humidity, within(4e-5 * humidity));
    }
  }
}
