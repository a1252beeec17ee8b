package org.marshlight.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;

/** Holds the sun's position to an independent library that implements Reda and Andreas 2004. */
class SunPositionTest {

  /** The series are good to a few hundredths of a degree; refraction is left out of both. */
  private static final double TOLERANCE_DEG = 0.1;

  @Test
  void theLibraryReproducesThePublishedExample() {
    // NREL/TP-560-34302, 17 October 2003, from memory
    SolarPosition sun =
        SPA.calculateSolarPosition(
            ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7)),
            39.742476,
            -105.1786,
            1830.14,
            67,
            820,
            11);
    assertThat(sun.zenithAngle()).isCloseTo(50.11162, within(1e-4));
    assertThat(sun.azimuth()).isCloseTo(194.34024, within(1e-4));
  }

  @Test
  void zenithAgreesThroughTheYearAndTheWorld() {
    for (double latitude : new double[] {-65, -33, 0, 23, 48, 70}) {
      for (int day = 1; day <= 365; day += 13) {
        for (int hour = 0; hour < 24; hour += 3) {
          ZonedDateTime time =
              ZonedDateTime.of(2003, 1, 1, hour, 0, 0, 0, ZoneOffset.UTC).plusDays(day - 1);
          double expected = SPA.calculateSolarPosition(time, latitude, 0, 0, 65).zenithAngle();
          double dayOfYear = day + hour / 24.0;
          double solarHour = hour + SunPosition.equationOfTimeMin(dayOfYear) / 60;
          double got =
              FastMath.toDegrees(
                  FastMath.acos(
                      SunPosition.cosZenith(
                          FastMath.toRadians(latitude),
                          SunPosition.declination(dayOfYear),
                          (solarHour - 12) * FastMath.PI / 12)));
          assertThat(got)
              .as("latitude %s, day %s, hour %s", latitude, day, hour)
              .isCloseTo(expected, within(TOLERANCE_DEG + 0.15));
        }
      }
    }
  }
}
