package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.Studies;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.study.ComparisonRequest;
import org.marshlight.study.ComparisonStudy;
import org.marshlight.study.UncertaintyRequest;
import org.marshlight.study.UncertaintyStudy;

class StudyDocumentTest {

  private static final String PLAN =
      "{\"site\":{\"climate\":{\"id\":\"burlington\"}},\"people\":{\"count\":3},"
          + "\"tank\":{\"liquidVolumeM3\":4}}";

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static StudyDocument<ComparisonStudy> comparison(String variants) {
    return StudyDocument.read(
        bytes("{\"plan\":" + PLAN + ",\"variants\":" + variants + "}"), ComparisonRequest.class);
  }

  private static List<Fault> faults(String variants) {
    List<Fault> faults = new ArrayList<>();
    assertThatThrownBy(() -> comparison(variants))
        .isInstanceOfSatisfying(Faults.class, thrown -> faults.addAll(thrown.list()));
    return faults;
  }

  @Test
  void settingsStandBesideThePlanWhoseHashIsItsOwn() {
    StudyDocument<UncertaintyStudy> document =
        StudyDocument.read(
            bytes("{\"draws\":64.0, \"plan\": " + PLAN + "}"), UncertaintyRequest.class);
    assertThat(((UncertaintyRequest) document.request()).draws()).isEqualTo(64);
    assertThat(document.planSha256()).isEqualTo(PlanDocument.read(bytes(PLAN)).sha256());
  }

  @Test
  void aPatchChangesWhatItNamesAndNothingElse() {
    ComparisonRequest request =
        (ComparisonRequest)
            comparison(
                    "[{\"name\":\"glass\",\"patch\":{\"cover\":{\"apertureM2\":3},\"people\":null}}]")
                .request();
    assertThat(request.variants().get(0).plan().cover().apertureM2()).isEqualTo(3.0);
    assertThat(request.variants().get(0).plan().people()).isNull();
    assertThat(request.variants().get(0).plan().tank()).isEqualTo(request.plan().tank());
    assertThat(request.plan().cover()).isNull();
  }

  @Test
  void aPatchThatMakesNoPlanIsNamedWithItsField() {
    assertThat(faults("[{\"name\":\"bad\",\"patch\":{\"tank\":{\"volume\":3}}}]"))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.pointer()).isEqualTo("/variants/0/patch/tank/volume");
              assertThat(fault.detail()).startsWith("In the variant bad: ");
            });
    assertThat(faults("[{\"name\":\"bad\",\"patch\":3}]"))
        .extracting(Fault::pointer)
        .containsExactly("/variants/0/patch");
    assertThat(faults("[{\"name\":\"bad\"}]"))
        .extracting(Fault::code)
        .containsExactly("json.patch-missing");
    assertThat(faults("[{\"name\":\"bad\",\"patch\":{},\"plan\":{}}]"))
        .extracting(Fault::code)
        .containsExactly("json.unknown-name");
  }

  @Test
  void aPatchThatMakesAnIllegalPlanIsNamedWithItsField() {
    StudyDocument<ComparisonStudy> document =
        comparison("[{\"name\":\"tiny\",\"patch\":{\"tank\":{\"liquidVolumeM3\":0.01}}}]");
    assertThatThrownBy(() -> Studies.open(document.request(), null))
        .isInstanceOfSatisfying(
            Faults.class,
            thrown -> {
              Fault fault = StudyDocument.asSent(thrown).list().get(0);
              assertThat(fault.pointer()).isEqualTo("/variants/0/patch/tank/liquidVolumeM3");
              assertThat(fault.detail()).contains("tiny");
              assertThat(fault.params()).containsEntry("variant", "tiny");
            });
  }

  @Test
  void everyFaultOfTheDocumentIsFound() {
    assertThatThrownBy(
            () ->
                StudyDocument.read(
                    bytes(
                        "{\"plan\":{\"site\":3},\"draws\":1e9,\"vary\":[{\"low\":\"x\"}],\"sed\":1}"),
                    UncertaintyRequest.class))
        .isInstanceOfSatisfying(
            Faults.class,
            thrown ->
                assertThat(thrown.list())
                    .extracting(Fault::pointer)
                    .containsExactly(
                        "/plan/site",
                        "/vary/0/low",
                        "/sed",
                        "/draws",
                        "/vary/0/high",
                        "/vary/0/pointer"));
  }

  @Test
  void aThousandMillionDrawsAreRefused() {
    StudyDocument<UncertaintyStudy> document =
        StudyDocument.read(
            bytes("{\"draws\":1e9, \"plan\": " + PLAN + "}"), UncertaintyRequest.class);
    assertThatThrownBy(() -> Studies.open(document.request(), null))
        .isInstanceOfSatisfying(
            Faults.class,
            thrown -> {
              assertThat(thrown.list()).extracting(Fault::pointer).containsExactly("/draws");
              assertThat(thrown.list().get(0).allowed()).contains("16384");
            });
  }
}
