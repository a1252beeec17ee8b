package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.Reason;
import org.marshlight.digester.DigesterEstimate;
import org.marshlight.loop.Plan;
import org.marshlight.study.CalibrationStudy.Fitted;
import org.marshlight.study.CalibrationStudy.Place;
import org.marshlight.study.CalibrationStudy.Told;

class CalibrationTest {

  private static final String LEAK = "digester.leak-share";
  private static final String INFLOW = "digester.inflow-above-mains";

  private static CalibrationRequest request(List<Reading> readings, List<String> fit) {
    return new CalibrationRequest(StudyFixture.TANK, readings, null, null, null, fit, 16, null);
  }

  /** What a tank with other coefficients than the book's would show. */
  private static List<Reading> readings(Map<String, Double> truth, double offK, double share) {
    Plan plan = StudyFixture.with(StudyFixture.TANK, truth);
    DigesterEstimate estimate = BaseRun.of(plan).outcome().run().digester().estimate();
    List<Reading> readings = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      double warmth = ReadingKind.LIQUOR_TEMPERATURE.modelled(estimate, month);
      double gas = ReadingKind.METERED_GAS.modelled(estimate, month);
      readings.add(new Reading(ReadingKind.LIQUOR_TEMPERATURE, month, warmth + offK, null));
      readings.add(new Reading(ReadingKind.METERED_GAS, month, gas * share, null));
    }
    return readings;
  }

  @Test
  void coefficientsBehindReadingsAreFoundAgain() {
    List<Reading> readings = readings(Map.of(LEAK, 0.25, INFLOW, 6.0), 0, 1);
    CalibrationStudy study = StudyFixture.run(request(readings, List.of(LEAK, INFLOW)), 2).study();
    Fitted leak = study.coefficients().get(0);
    Fitted inflow = study.coefficients().get(1);
    assertThat(leak.value()).isCloseTo(0.25, within(1e-4));
    assertThat(inflow.value()).isCloseTo(6.0, within(1e-2));
    assertThat(leak.told()).isEqualTo(Told.WELL);
    assertThat(leak.low()).isLessThan(0.25);
    assertThat(leak.high()).isGreaterThan(0.25);
    assertThat(study.reducedChiSquare()).isLessThan(1e-4);
    assertThat(study.plan().coefficients()).containsEntry(LEAK, leak.value());
  }

  @Test
  void oneThreadAndTwoGiveTheSame() {
    CalibrationRequest request =
        request(readings(Map.of(LEAK, 0.25), 0.3, 1), List.of(LEAK, INFLOW));
    assertThat(StudyFixture.run(request, 2)).isEqualTo(StudyFixture.run(request, 1));
  }

  @Test
  void aCoefficientThatReadingsDoNotTellIsNotTold() {
    List<Reading> warmth =
        readings(Map.of(), 0, 1).stream()
            .filter(r -> r.kind() == ReadingKind.LIQUOR_TEMPERATURE)
            .toList();
    Studied<CalibrationStudy> studied = StudyFixture.run(request(warmth, List.of(LEAK)), 1);
    Fitted leak = studied.study().coefficients().get(0);
    assertThat(leak.told()).isEqualTo(Told.NOT);
    assertThat(leak.low()).isNull();
    assertThat(studied.notices()).extracting(Notice::code).contains("study.not-identified");
  }

  @Test
  void twoCoefficientsThatDoTheSameAreNotToldApart() {
    List<Reading> gas =
        readings(Map.of(LEAK, 0.2), 0, 1).stream()
            .filter(r -> r.kind() == ReadingKind.METERED_GAS)
            .toList();
    Studied<CalibrationStudy> studied =
        StudyFixture.run(request(gas, List.of(LEAK, "digester.methane-fraction")), 2);
    assertThat(studied.notices())
        .extracting(Notice::code)
        .containsAnyOf("study.not-told-apart", "study.not-identified");
  }

  @Test
  void readingsThatTheModelGivesLieInside() {
    CalibrationStudy study =
        StudyFixture.run(request(readings(Map.of(), 0, 1), List.of()), 2).study();
    assertThat(study.coefficients()).isEmpty();
    assertThat(study.outside()).isZero();
    assertThat(study.causes()).isEmpty();
    assertThat(study.months())
        .hasSize(24)
        .allSatisfy(m -> assertThat(m.place()).isEqualTo(Place.INSIDE));
    assertThat(study.reducedChiSquare()).isCloseTo(0, within(1e-9));
    assertThat(study.plan()).isEqualTo(StudyFixture.TANK);
  }

  @Test
  void aColdTankWithLittleGasIsToldToLookAtItsWarmthFirst() {
    CalibrationStudy study =
        StudyFixture.run(request(readings(Map.of(), -15, 0.02), List.of()), 2).study();
    assertThat(study.outside()).isGreaterThan(12);
    assertThat(study.causes())
        .extracting(Reason::code)
        .contains("study.cause-colder", "study.cause-less-gas-cold");
    assertThat(study.months().get(0).place()).isEqualTo(Place.BELOW);
  }

  @Test
  void requestsThatMakeNoSenseAreTold() {
    Reading january = new Reading(ReadingKind.METERED_GAS, 1, 3.0, null);
    assertThat(faults(request(List.of(january, january), List.of())))
        .containsExactly("study.month-read-twice");
    assertThat(faults(request(List.of(january), List.of(LEAK))))
        .containsExactly("study.too-few-readings");
    assertThat(faults(request(List.of(), List.of()))).containsExactly("study.no-readings");
    assertThat(faults(request(List.of(january), List.of("digester.leak"))))
        .containsExactly("loop.unknown-coefficient");
    assertThat(
            faults(
                request(List.of(new Reading(ReadingKind.METERED_GAS, 1, -3.0, null)), List.of())))
        .containsExactly("study.impossible-reading");
  }

  private static List<String> faults(CalibrationRequest request) {
    List<String> codes = new ArrayList<>();
    assertThatThrownBy(request::prepare)
        .isInstanceOfSatisfying(
            Faults.class, thrown -> thrown.list().stream().map(Fault::code).forEach(codes::add));
    return codes;
  }
}
