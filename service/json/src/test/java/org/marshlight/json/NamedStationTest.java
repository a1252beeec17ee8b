package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.climate.BuiltInClimate;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.Stage;

/** A plan that names a station gets the station's place and rain, and no other place's. */
class NamedStationTest {

  private static final String MINNEAPOLIS = "'climate':{'id':'minneapolis-saint-paul'}";

  /** The station lies at 44.88 N, 93.23 W, 254 m above the sea. */
  @ParameterizedTest
  @CsvSource({
    "latitudeDeg, 80, 42.88 to 46.88 deg",
    "latitudeDeg, -44.9, 42.88 to 46.88 deg",
    "latitudeDeg, 47, 42.88 to 46.88 deg",
    "longitudeDeg, 93.2, -96.23 to -90.23 deg",
    "elevationM, 1500, -46 to 554 m"
  })
  void aPlaceFarFromItsStationIsRefused(String field, double value, String allowed) {
    assertThat(faults("{" + MINNEAPOLIS + ",'" + field + "':" + value + "}"))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.code()).isEqualTo("climate.station-too-far");
              assertThat(fault.pointer()).isEqualTo("/site/" + field);
              assertThat(fault.rejected()).isEqualTo(String.valueOf(value));
              assertThat(fault.allowed()).isEqualTo(allowed);
              assertThat(fault.detail()).contains("Minneapolis").contains(" differs by ");
            });
  }

  @Test
  void aPlaceNearItsStationIsAnsweredWithANotice() {
    Answer<PlanEstimate> answer = answer("{" + MINNEAPOLIS + ",'latitudeDeg':45.5}");
    assertThat(codes(answer)).contains("climate.near-station");
    assertThat(codes(answer("{" + MINNEAPOLIS + "}"))).doesNotContain("climate.near-station");
  }

  @Test
  void aStationBringsItsOwnPlace() {
    String named = "{'climate':{'id':'christchurch'}";
    BuiltInClimate station = BuiltInClimates.standard().find("christchurch").orElseThrow();
    String placed =
        named
            + ",'latitudeDeg':"
            + station.latitudeDeg()
            + ",'longitudeDeg':"
            + station.longitudeDeg()
            + ",'elevationM':"
            + station.elevationM()
            + "}";
    Answer<PlanEstimate> own = answer(named + "}");
    assertThat(own.estimate()).isEqualTo(answer(placed).estimate());
    // the tank of an invented plan at the station's own place, south of the equator and in frost
    assertThat(own.estimate().digester().annual().meanLiquorTemperatureC()).isLessThan(25);
  }

  @Test
  void rainBesideAStationReplacesItsRain() {
    String beds = ",'beds':[{'areaM2':20}]";
    double dry = bedRainM3("{'climate':{'id':'seattle-tacoma','rainMm':" + monthly(0) + "}}", beds);
    double own = bedRainM3("{'climate':{'id':'seattle-tacoma'}}", beds);
    double wet =
        bedRainM3("{'climate':{'id':'seattle-tacoma','rainMm':" + monthly(200) + "}}", beds);
    assertThat(dry).isZero();
    // CLIMAT reports of station 72793, 2003 to 2021: 1023 mm a year
    assertThat(own).isCloseTo(20 * 1.023, within(1e-9));
    assertThat(wet).isCloseTo(20 * 2.4, within(1e-9));
  }

  @Test
  void rainBesideMonthlyNormalsIsRefused() {
    String air = "{'meanAirTemperatureC':" + monthly(10) + ",'horizontalSolarKWhM2Day':";
    String site =
        "{'latitudeDeg':45,'climate':{'monthly':"
            + air
            + monthly(1)
            + "},'rainMm':"
            + monthly(50)
            + "}}";
    assertThat(faults(site))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(
                "climate.rain-beside-normals", "/site/climate/rainMm"));
  }

  @Test
  void recalledRainIsSaidToBeSo() {
    assertThat(codes(answer("{'climate':{'id':'boulder-broomfield'}}")))
        .contains("climate.rain-from-memory");
    assertThat(
            codes(answer("{'climate':{'id':'boulder-broomfield','rainMm':" + monthly(30) + "}}")))
        .doesNotContain("climate.rain-from-memory", "climate.rain-assumed");
  }

  @Test
  void everyBuiltInClimateIsLegalAndItsRainHasASource() {
    for (BuiltInClimate station : BuiltInClimates.standard().all()) {
      assertThat(faults("{'climate':{'id':'" + station.id() + "'}}")).as(station.id()).isEmpty();
      assertThat(station.monthly().rainMm() == null)
          .as(station.id())
          .isEqualTo(station.rainSource() == null)
          .isEqualTo(station.rainMark() == null);
    }
  }

  @Test
  void hoursWithMoreSunThanTheSkyAreRefused() {
    String hours =
        "'hours':{'utcOffsetH':-6,'airTemperatureC':"
            + hourly(10)
            + ",'globalWM2':"
            + hourly(600)
            + ",'diffuseWM2':"
            + hourly(100)
            + "}";
    assertThat(faults("{" + MINNEAPOLIS + "," + hours + "}"))
        .isNotEmpty()
        .allSatisfy(
            fault -> {
              assertThat(fault.code()).isEqualTo("climate.hours-more-sun-than-sky");
              assertThat(fault.pointer()).isEqualTo("/site/hours/globalWM2");
            });
  }

  private static double bedRainM3(String site, String parts) {
    return answer(site, parts).estimate().wetland().beds().stream()
        .flatMap(bed -> bed.monthly().rainM3().stream())
        .mapToDouble(Double::doubleValue)
        .sum();
  }

  private static List<String> codes(Answer<PlanEstimate> answer) {
    return answer.notices().stream().map(Notice::code).toList();
  }

  private static String monthly(double value) {
    return Collections.nCopies(12, value).toString();
  }

  private static String hourly(int value) {
    return IntStream.range(0, 8760).mapToObj(hour -> value).toList().toString();
  }

  private static List<Fault> faults(String site) {
    Faults refusal = catchThrowableOfType(() -> answer(site), Faults.class);
    return refusal == null ? List.of() : refusal.list();
  }

  private static Answer<PlanEstimate> answer(String site) {
    return answer(site, "");
  }

  private static Answer<PlanEstimate> answer(String site, String parts) {
    String plan = "{'site':" + site + ",'people':{'count':4},'tank':{}" + parts + "}";
    PlanDocument document =
        PlanDocument.read(plan.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    return Marshlight.estimate(
        new Marshlight.Request(document.plan(), Stage.LOOP, false, document.sha256()));
  }
}
