package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.loop.Stage;
import org.marshlight.study.SizingRequest;

/** Whoever sends a wrong request learns of everything that is wrong with it in one answer. */
class OneRoundTest {

  /** Invented: unknown field, wrong types, values out of range, and rules that join fields. */
  private static final String PLAN =
      """
      {"site": {"climate": {"id": "no-such-place"}},
       "people": {"presentFraction": [50, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1.0001]},
       "tnak": {},
       "tank": {"liquidVolumeM3": 3, "liquidDepthM": 1, "lengthM": 30},
       "cover": {"apertureM2": "4"},
       "gas": {"uses": [{"use": "cooking", "hoursPerDay": 1, "mealsPerDay": 2}]},
       "compost": {"landAreaM2": -3},
       "coefficients": {"digester.leak-shar": 0.1, "digester.leak-share": 7}}""";

  @Test
  void formRangeAndRulesComeTogether() {
    assertThat(faultsOf(() -> PlanDocument.read(bytes(PLAN), Stage.LOOP)))
        .extracting(Fault::code, Fault::pointer)
        .contains(
            tuple("json.unknown-name", "/tnak"),
            tuple("json.wrong-type", "/cover/apertureM2"),
            tuple("loop.not-in-catalogue", "/site/climate/id"),
            tuple("loop.out-of-range", "/people/presentFraction/0"),
            tuple("loop.out-of-range", "/people/presentFraction/11"),
            tuple("loop.out-of-range", "/compost/landAreaM2"),
            tuple("loop.unknown-coefficient", "/coefficients/digester.leak-shar"),
            tuple("loop.out-of-range", "/coefficients/digester.leak-share"),
            tuple("loop.tank-too-narrow", "/tank/lengthM"),
            tuple("loop.one-of-two", "/gas/uses/0"));
  }

  @Test
  void ofWhatCouldNotBeReadNothingMoreIsSaid() {
    String plan =
        """
        {"site": 3, "beds": [{"areaM2": 4}, null, {"areaM2": true}], "tank": "large"}""";
    assertThat(faultsOf(() -> PlanDocument.read(bytes(plan), Stage.LOOP)))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(
            tuple("json.wrong-type", "/site"),
            tuple("json.null-element", "/beds/1"),
            tuple("json.wrong-type", "/beds/2/areaM2"),
            tuple("json.wrong-type", "/tank"));
  }

  @Test
  void anEntryOfAListIsNamedWithItsPlaceAndItsValue() {
    assertThat(faultsOf(() -> PlanDocument.read(bytes(PLAN), Stage.LOOP)))
        .filteredOn(fault -> fault.pointer().startsWith("/people"))
        .extracting(Fault::detail)
        .containsExactly(
            "presentFraction (entry 1) must lie from 0 to 1; sent was 50.",
            "presentFraction (entry 12) must lie from 0 to 1; sent was 1.0001.");
  }

  @Test
  void aStudyIsAnsweredInOneRoundToo() {
    String request =
        """
        {"plan": %s, "tragets": [],
         "targets": [{"figure": "digester.gasEnergyKWh", "atLeast": "much"}],
         "free": [{"pointer": "/tank/liquidVolumeM3", "low": 1, "high": 1e40}]}"""
            .formatted(PLAN);
    assertThat(faultsOf(() -> StudyDocument.read(bytes(request), SizingRequest.class)))
        .extracting(Fault::code, Fault::pointer)
        .contains(
            tuple("json.unknown-name", "/tragets"),
            tuple("json.wrong-type", "/targets/0/atLeast"),
            tuple("json.wrong-type", "/plan/cover/apertureM2"),
            tuple("loop.out-of-range", "/free/0/high"),
            tuple("loop.out-of-range", "/plan/compost/landAreaM2"),
            tuple("loop.tank-too-narrow", "/plan/tank/lengthM"))
        .doesNotHaveDuplicates();
  }

  private static List<Fault> faultsOf(ThrowingCallable reading) {
    Faults thrown = catchThrowableOfType(Faults.class, reading);
    assertThat(thrown).isInstanceOf(Faults.class);
    return thrown.list();
  }

  private static byte[] bytes(String json) {
    return json.getBytes(StandardCharsets.UTF_8);
  }
}
