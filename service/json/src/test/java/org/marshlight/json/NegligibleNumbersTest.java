package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.Studies;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.contract.Notice;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.loop.NegligibleNumbers;
import org.marshlight.loop.Stage;
import org.marshlight.study.SizingRequest;
import org.marshlight.study.StudyRequest;
import org.marshlight.study.SweepRequest;
import org.marshlight.study.UncertaintyRequest;

/** Legal numbers that are next to zero count as zero, and the answer says so. */
class NegligibleNumbersTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String SAMPLE = "loop-hill-smallholding";

  @ParameterizedTest
  @CsvSource({
    "/fuel/mashedFraction, 1e-308",
    "/gas/uses/0/hoursPerDay, 1e-308",
    "/compost/ingredients/0/freshKgPerYear, 1e-308",
    "/feeds/0/freshKgPerDay, 4.9e-324",
    "/beds/0/harvestedFraction, 1e-170",
    "/money/fuelPricePerKWh, 9.9e-10",
    "/cover/nightResistanceM2KW, 1e-320",
  })
  void aTinyNumberOfAPlanCountsAsZero(String pointer, String value) throws IOException {
    ObjectNode plan = with(plan(), pointer, value);
    Answer<PlanEstimate> tiny = answer(plan);
    Answer<PlanEstimate> zero = answer(with(plan(), pointer, "0"));
    assertThat(tiny.estimate()).isEqualTo(zero.estimate());
    Notice notice = tiny.notices().get(0);
    assertThat(notice.code()).isEqualTo("loop.counts-as-zero");
    assertThat(notice.params()).containsEntry("pointer", pointer);
    assertThat(tiny.notices().subList(1, tiny.notices().size())).isEqualTo(zero.notices());
    assertThat(ContractJson.write(tiny)).isNotEmpty();
  }

  @Test
  void tinyPresenceCountsAsNobodyAtHome() throws IOException {
    ObjectNode plan = plan();
    ObjectNode people = (ObjectNode) plan.path("people");
    people.putArray("presentFraction");
    for (int month = 0; month < 12; month++) {
      people.withArray("presentFraction").add(1e-308);
    }
    Answer<PlanEstimate> answer = answer(plan);
    assertThat(answer.notices().stream().filter(n -> n.code().equals("loop.counts-as-zero")))
        .hasSize(12);
    assertThat(answer.estimate().digester().annual().methaneGPerPersonDay()).isNull();
    assertThat(ContractJson.write(answer)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"storageOrganDryKg", "topsDryKg"})
  void aTinyGivenHarvestCountsAsNone(String field) throws IOException {
    String plan =
        """
        {"name": "Invented demo: a still with next to no harvest",
         "site": {"climate": {"id": "burlington"}},
         "given": {"harvest": {"plant": "broadleaf-cattail", "storageOrganDryKg": 50, "topsDryKg": 20}},
         "fuel": {}}""";
    ObjectNode request = (ObjectNode) JSON.readTree(plan);
    ((ObjectNode) request.at("/given/harvest")).put(field, 1e-320);
    Answer<PlanEstimate> answer = answer(request);
    assertThat(answer.notices().get(0).code()).isEqualTo("loop.counts-as-zero");
    assertThat(ContractJson.write(answer)).isNotEmpty();
  }

  /** What is out of range stays so, and what has a meaning beside zero is not touched. */
  @Test
  void numbersThatAreWrongOrSmallButMeantStayAsTheyAre() throws IOException {
    ObjectNode negative = with(plan(), "/fuel/mashedFraction", "-1e-308");
    assertThatThrownBy(() -> answer(negative))
        .isInstanceOfSatisfying(
            Faults.class,
            faults -> assertThat(faults.list().get(0).code()).isEqualTo("loop.out-of-range"));
    ObjectNode small = with(plan(), "/feeds/0/freshKgPerDay", "1.1e-9");
    assertThat(NegligibleNumbers.of(document(small).plan()).notices()).isEmpty();
  }

  /** Found at random: what enters in a year was lost among the rounding of what the tank holds. */
  @ParameterizedTest
  @CsvSource({
    "vegetable-trimmings, 1e-8, 0.2, loop.tank-never-fills",
    "poultry-manure, 5e-4, 500, loop.tank-never-fills",
    "vegetable-trimmings, 1e-2, 0.5, ",
  })
  void aTankThatNextToNothingEntersIsRefused(
      String feed, double freshKgPerDay, double volumeM3, String code) throws IOException {
    String request =
        """
        {"site": {"climate": {"id": "managua"}},
         "feeds": [{"feed": "%s", "freshKgPerDay": %s}],
         "tank": {"liquidVolumeM3": %s, "liquidDepthM": 0.5}}"""
            .formatted(feed, freshKgPerDay, volumeM3);
    ObjectNode plan = (ObjectNode) JSON.readTree(request);
    if (code != null) {
      assertThat(codes(() -> answer(plan))).containsExactly(code);
      return;
    }
    assertThat(answer(plan).estimate().balances())
        .allSatisfy(balance -> assertThat(balance.relativeResidual()).isLessThanOrEqualTo(1e-9));
  }

  @Test
  void rangesOfStudiesThatNoFigureChangesOverAreRefused() throws IOException {
    String uncertainty =
        "{\"plan\": %s, \"vary\": [{\"pointer\": \"/tank/burialDepthM\", \"low\": %s, \"high\": %s}]}";
    for (String[] range :
        List.of(new String[] {"0", "1e-170"}, new String[] {"1.2", "1.2000000000000002"})) {
      byte[] body = bytes(uncertainty.formatted(plan(), range[0], range[1]));
      assertThat(codes(() -> open(body, UncertaintyRequest.class)))
          .containsExactly("study.range-too-narrow");
    }
    byte[] sweep =
        bytes(
            "{\"plan\": "
                + plan()
                + ", \"vary\": [{\"pointer\": \"/tank/burialDepthM\", \"from\": 0, \"to\": 1e-170,"
                + " \"points\": 3}]}");
    assertThat(codes(() -> open(sweep, SweepRequest.class)))
        .containsExactly("study.range-too-narrow");
    byte[] sizing =
        bytes(
            "{\"plan\": "
                + plan()
                + ", \"free\": [{\"pointer\": \"/tank/burialDepthM\", \"low\": 0, \"high\": 1e-170}],"
                + " \"targets\": [{\"figure\": \"/digester/annual/methaneNm3\", \"atLeast\": 1}]}");
    assertThat(codes(() -> open(sizing, SizingRequest.class))).contains("study.range-too-narrow");
  }

  private static List<String> codes(ThrowingCallable opening) {
    Throwable thrown = catchThrowable(opening);
    assertThat(thrown).isInstanceOf(Faults.class);
    return ((Faults) thrown).list().stream().map(Fault::code).toList();
  }

  private static <T extends Record, R extends Record & StudyRequest<T>> void open(
      byte[] body, Class<R> type) {
    StudyDocument<T> document = StudyDocument.read(body, type);
    Studies.open(document.request(), document.planSha256());
  }

  private static ObjectNode plan() throws IOException {
    return (ObjectNode) JSON.readTree(SamplePlans.request(SAMPLE));
  }

  private static ObjectNode with(ObjectNode plan, String pointer, String value) {
    int last = pointer.lastIndexOf('/');
    ((ObjectNode) plan.at(pointer.substring(0, last)))
        .put(pointer.substring(last + 1), Double.parseDouble(value));
    return plan;
  }

  private static Answer<PlanEstimate> answer(ObjectNode plan) {
    return Marshlight.estimate(
        new Marshlight.Request(document(plan).plan(), Stage.LOOP, false, null));
  }

  private static PlanDocument document(ObjectNode plan) {
    return PlanDocument.read(bytes(plan.toString()));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
