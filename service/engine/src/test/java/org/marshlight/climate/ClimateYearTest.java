package org.marshlight.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Months;
import org.marshlight.contract.Notice;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;
import org.marshlight.evidence.Defaults;

/** The hourly year keeps what the months say. */
class ClimateYearTest {

  private static final CoefficientSet CENTRAL = CoefficientBook.standard().central();

  @Test
  void everyMonthKeepsItsMeansAtEveryStation() {
    for (BuiltInClimate station : BuiltInClimates.standard().all()) {
      ClimateYear year = year(new ClimateChoice(station.id(), null), null);
      for (int month = 0; month < Months.COUNT; month++) {
        double air = 0;
        double sun = 0;
        int from = 24 * Months.firstDay(month);
        int to = from + 24 * Months.days(month);
        for (int hour = from; hour < to; hour++) {
          air += year.airC()[hour] / (to - from);
          sun += (year.beamWM2()[hour] + year.diffuseWM2()[hour]) / 1000 / Months.days(month);
        }
        assertThat(air)
            .as("%s, month %s", station.id(), month + 1)
            .isCloseTo(station.monthly().meanAirTemperatureC().get(month), within(1e-3));
        assertThat(sun)
            .as("%s, month %s", station.id(), month + 1)
            .isCloseTo(station.monthly().horizontalSolarKWhM2Day().get(month), within(1e-6));
      }
    }
  }

  @Test
  void diffuseShareIsThatOfTheStations() {
    // the typical years' own split, itself modelled, has a mean share of 0.397; Erbs gives 0.373
    double sum = 0;
    for (BuiltInClimate station : BuiltInClimates.standard().all()) {
      ClimateYear year = year(new ClimateChoice(station.id(), null), null);
      double diffuse = 0;
      double global = 0;
      for (int hour = 0; hour < ClimateYear.HOURS; hour++) {
        diffuse += year.diffuseWM2()[hour];
        global += year.diffuseWM2()[hour] + year.beamWM2()[hour];
      }
      sum += diffuse / global;
    }
    assertThat(sum / BuiltInClimates.standard().all().size()).isBetween(0.33, 0.42);
  }

  @Test
  void polarNightHasNoSunAndNoFault() {
    List<Double> air = Collections.nCopies(12, -5.0);
    List<Double> sun = List.of(0.0, 0.3, 1.5, 3.5, 5.0, 5.5, 5.0, 3.2, 1.5, 0.5, 0.0, 0.0);
    ClimateYear year =
        year(
            new ClimateChoice(
                null, new MonthlyNormals(air, null, null, sun, null, null, null, null, null)),
            78.0);
    for (int hour = 0; hour < ClimateYear.HOURS; hour++) {
      assertThat(year.airC()[hour]).isFinite();
      assertThat(year.skyC()[hour]).isFinite();
      assertThat(year.beamWM2()[hour]).isFinite().isNotNegative();
    }
    assertThat(year.beamWM2()[12]).isZero();
  }

  @Test
  void skyIsAboutElevenKelvinBelowTheAir() {
    // infrared columns of the typical years: 7.6 K below the air at Managua, 15.2 K at Las Vegas;
    // the method's own monthly scatter against them is 2.3 K, and twice that is allowed
    assertThat(skyDepression("managua")).isCloseTo(7.6, within(4.6));
    assertThat(skyDepression("las-vegas-mccarran")).isCloseTo(15.2, within(4.6));
  }

  @Test
  void sitesThatDifferBelowGroundOnlyShareTheirWeather() {
    ClimateYear loam = year("moist-loam", "managua");
    ClimateYear sand = year("dry-sand", "managua");
    ClimateYear shared = loam.over(sand.site(), null, Double.NaN);
    assertThat(shared.site()).isSameAs(sand.site());
    assertThat(shared.airC()).isSameAs(loam.airC()).containsExactly(sand.airC());
    assertThat(shared.skyC()).containsExactly(sand.skyC());
    assertThat(shared.beamWM2()).containsExactly(sand.beamWM2());
    assertThat(shared.tilted(30, 180).skyWM2()).containsExactly(sand.tilted(30, 180).skyWM2());
    assertThat(shared.tilted(60, 90).beamWM2()).containsExactly(sand.tilted(60, 90).beamWM2());

    ClimateYear elsewhere = year("moist-loam", "las-vegas-mccarran");
    assertThat(loam.over(elsewhere.site(), null, Double.NaN)).isNull();
  }

  private static ClimateYear year(String soil, String climate) {
    Defaults defaults = new Defaults(CENTRAL);
    SiteDesign site =
        defaults.fill(
            new SiteDesign(
                new ClimateChoice(climate, null), null, null, null, soil, null, null, null),
            "/site");
    return ClimateYear.of(ClimateModel.prepare(site, defaults, CENTRAL, new ArrayList<Notice>()));
  }

  private static double skyDepression(String climate) {
    ClimateYear year = year(new ClimateChoice(climate, null), null);
    double sum = 0;
    for (int hour = 0; hour < ClimateYear.HOURS; hour++) {
      sum += year.airC()[hour] - year.skyC()[hour];
    }
    return sum / ClimateYear.HOURS;
  }

  private static ClimateYear year(ClimateChoice climate, Double latitude) {
    Defaults defaults = new Defaults(CENTRAL);
    SiteDesign site =
        defaults.fill(
            new SiteDesign(climate, latitude, null, null, null, null, null, null), "/site");
    return ClimateYear.of(ClimateModel.prepare(site, defaults, CENTRAL, new ArrayList<Notice>()));
  }
}
