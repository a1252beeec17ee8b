package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.Answer;
import org.marshlight.Meta;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Notice;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.Sentences;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.Step;
import org.marshlight.loop.Stage;
import org.marshlight.loop.StageWorking;
import org.marshlight.safety.CautionBook;

/** How answers are written. */
class ContractJsonTest {

  @Test
  void namesStandInTheOrderOfTheRecord() throws IOException {
    Record row = CoefficientBook.standard().rows().get(0);
    JsonNode written = ContractJson.mapper().readTree(ContractJson.write(row));
    assertThat(names(written)).isEqualTo(RecordShape.of(row.getClass()).names());
    Record caution = CautionBook.standard().all().get(0);
    assertThat(names(ContractJson.mapper().readTree(ContractJson.write(caution))))
        .isEqualTo(RecordShape.of(caution.getClass()).names());
  }

  @Test
  void choicesHaveTheirWireNames() {
    assertThat(text(new StageWorking(Stage.LOOP, List.of())))
        .isEqualTo("{\"stage\":\"loop\",\"steps\":[]}");
  }

  @Test
  void partsOfAnEstimateThatAreNullAreLeftOutAndOtherNullsAreWritten() {
    RecordShape shape = RecordShape.of(PlanEstimate.class);
    PlanEstimate empty = (PlanEstimate) shape.create(new Object[shape.fields().size()]);
    Answer<PlanEstimate> answer =
        new Answer<>(
            empty, CautionBook.standard().general(), List.of(), List.of(), Meta.WITHOUT_PLAN);
    assertThat(text(answer))
        .startsWith("{\"estimate\":{},\"cautions\":[{")
        .endsWith(
            "\"meta\":{\"version\":\"" + Meta.VERSION + "\",\"planSha256\":null,\"passes\":null}}");
  }

  @Test
  void numbersAreWrittenInTheirShortestForm() {
    Map<String, Object> params = new LinkedHashMap<>();
    params.put("b", 2.0E-3);
    params.put("a", 2.2250738585072014E-308);
    params.put("c", 2.0e23);
    assertThat(text(new Fault("json.x", "", null, "", "", params)))
        .contains("\"rejected\":null")
        .endsWith("\"params\":{\"a\":2.2250738585072014E-308,\"b\":0.002,\"c\":2.0E23}}");
  }

  /** JSON has no infinity and no NaN (RFC 8259, section 6), and no answer may hold them as text. */
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void numbersThatAreNotFiniteAreNeverWritten(double number) {
    Step step = new Step("feed.theoretical-cod", Map.of(), number, "kg/kg", "stoichiometry");
    assertThatThrownBy(() -> ContractJson.write(step)).isInstanceOf(UncheckedIOException.class);
    Map<String, Object> params = Map.of("number", number);
    assertThatThrownBy(() -> ContractJson.write(new Fault("json.x", "", null, "", "", params)))
        .isInstanceOf(UncheckedIOException.class);
    assertThatThrownBy(() -> Notice.of("loop.counts-as-zero", "field", number))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Sentences.number(number)).isInstanceOf(IllegalArgumentException.class);
  }

  private static String text(Record answer) {
    return new String(ContractJson.write(answer), StandardCharsets.UTF_8);
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
