package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Faults;
import org.marshlight.digester.TankShape;
import org.marshlight.loop.Plan;
import org.marshlight.wetland.BedKind;

/** A plan is read as it stands or refused with everything that is wrong with it. */
class RecordReaderTest {

  @Test
  void theContractPlanIsReadWhole() throws IOException {
    Path sample =
        Path.of(System.getProperty("repository"), "sample-requests/loop-hill-smallholding.json");
    PlanDocument document = PlanDocument.read(Files.readAllBytes(sample));
    Plan plan = document.plan();
    assertThat(plan.tank().shape()).isEqualTo(TankShape.RECTANGULAR);
    assertThat(plan.tank().compartments()).isEqualTo(2);
    assertThat(plan.site().climate().monthly().rainMm()).hasSize(12).endsWith(53.0);
    assertThat(plan.beds().get(1).kind()).isEqualTo(BedKind.FREE_WATER_SURFACE);
    assertThat(plan.feeds().get(1).months()).containsExactly(11, 12, 1, 2, 3, 4);
    assertThat(plan.coefficients()).isEmpty();
    assertThat(plan.routes()).isNull();
    assertThat(document.sha256()).matches("[0-9a-f]{64}");
  }

  @Test
  void everyFaultIsFoundAtOnceInTheOrderOfTheDocument() {
    List<Fault> faults =
        faultsOf(
            """
            {"nmae": "x", "site": {"elevationM": "620", "soil": 4},
             "people": {"count": true}, "beds": [{"kind": "open-water"}, null, 7],
             "tank": {"compartments": 2.5, "liquidVolumeM3": 1e400},
             "money": [], "coefficients": {"a/b": "1"}}""");
    assertThat(faults)
        .extracting(Fault::code, Fault::pointer, Fault::rejected)
        .containsExactly(
            tuple("json.unknown-name", "/nmae", "x"),
            tuple("json.wrong-type", "/site/elevationM", "\"620\""),
            tuple("json.wrong-type", "/site/soil", "4"),
            tuple("json.wrong-type", "/people/count", "true"),
            tuple("json.unknown-choice", "/beds/0/kind", "open-water"),
            tuple("json.null-element", "/beds/1", null),
            tuple("json.wrong-type", "/beds/2", "7"),
            tuple("json.not-whole", "/tank/compartments", "2.5"),
            tuple("json.not-finite", "/tank/liquidVolumeM3", "Infinity"),
            tuple("json.wrong-type", "/money", null),
            tuple("json.wrong-type", "/coefficients/a~1b", "\"1\""));
    assertThat(faults.get(0).params()).containsEntry("nearest", "name");
    assertThat(faults.get(4).allowed()).isEqualTo("free-water-surface, horizontal-subsurface");
  }

  @ParameterizedTest
  @CsvSource({"4", "4.0", "40e-1"})
  void aCountMayBeWrittenWithAPoint(String number) {
    assertThat(plan("{\"tank\": {\"compartments\": " + number + "}}").tank().compartments())
        .isEqualTo(4);
  }

  @ParameterizedTest
  @CsvSource({"4.5", "1e10", "-1e300"})
  void aCountIsNeverRoundedOrCut(String number) {
    assertThat(faultsOf("{\"tank\": {\"compartments\": " + number + "}}"))
        .extracting(Fault::code)
        .containsExactly("json.not-whole");
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "-Infinity", "1e400", "-1e400"})
  void numbersMustBeFinite(String number) {
    assertThat(faultsOf("{\"coefficients\": {\"x\": " + number + "}}"))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(tuple("json.not-finite", "/coefficients/x"));
  }

  @Test
  void nullMeansAbsent() {
    Plan plan =
        plan("{\"name\": null, \"tank\": {\"shape\": null}, \"coefficients\": {\"x\": null}}");
    assertThat(plan.name()).isNull();
    assertThat(plan.tank().shape()).isNull();
    assertThat(plan.coefficients()).isEmpty();
  }

  @Test
  void aNameGivenTwiceIsAFaultEvenIfBothAgree() {
    assertThat(faultsOf("{\"name\": \"a\", \"name\": \"a\"}"))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(tuple("json.repeated-name", "/name"));
  }

  @ParameterizedTest
  @CsvSource({"[]", "1", "\"plan\"", "null"})
  void aDocumentThatIsNoObjectIsRefusedAsAWhole(String document) {
    assertThat(faultsOf(document))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(tuple("json.wrong-type", ""));
  }

  @Test
  void entriesBeyondTheLongestListAreNotLookedAt() {
    String beds = IntStream.range(0, 9).mapToObj(i -> "0").collect(Collectors.joining(","));
    String ids =
        IntStream.range(0, 201).mapToObj(i -> "\"c" + i + "\":0").collect(Collectors.joining(","));
    assertThat(faultsOf("{\"beds\": [" + beds + "], \"coefficients\": {" + ids + "}}"))
        .extracting(Fault::code, Fault::pointer)
        .containsExactly(tuple("json.too-long", "/beds"), tuple("json.too-long", "/coefficients"));
  }

  @Test
  void theListOfFaultsIsBounded() {
    String names =
        IntStream.range(0, 5000).mapToObj(i -> "\"n" + i + "\":0").collect(Collectors.joining(","));
    assertThat(faultsOf("{" + names + "}")).hasSize(RecordReader.MOST_FAULTS);
  }

  private static Plan plan(String json) {
    return PlanDocument.read(json.getBytes(StandardCharsets.UTF_8)).plan();
  }

  private static List<Fault> faultsOf(String json) {
    JsonDocument document = JsonDocument.parse(json.getBytes(StandardCharsets.UTF_8));
    Faults thrown =
        catchThrowableOfType(Faults.class, () -> RecordReader.read(document, Plan.class));
    assertThat(thrown).as(json).isInstanceOf(Faults.class);
    return thrown.list();
  }
}
