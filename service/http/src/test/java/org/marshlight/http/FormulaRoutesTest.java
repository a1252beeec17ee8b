package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.FormulaEntry;

/** Single formulas worked over HTTP. */
@QuarkusTest
class FormulaRoutesTest {

  /** The summer solstice's declination, 23.45 degrees (common knowledge of the trade). */
  @Test
  void aFormulaIsWorked() {
    Response response =
        Service.post("/v1/formulas/climate.declination", "{\"inputs\": {\"dayOfYear\": 172}}");
    JsonNode answer = Service.json(response);
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(answer.path("formula").asText()).isEqualTo("climate.declination");
    assertThat(Math.toDegrees(answer.path("value").asDouble())).isCloseTo(23.45, within(0.05));
    assertThat(answer.path("unit").asText()).isNotBlank();
    assertThat(answer.path("source").asText()).isNotBlank();
    assertThat(answer.path("inputs").path("dayOfYear").asDouble()).isEqualTo(172);
    assertThat(answer.path("cautions")).isNotEmpty();
    assertThat(answer.path("meta").path("version").asText()).isNotBlank();
  }

  @Test
  void everyWrongInputIsTold() {
    JsonNode errors =
        Service.refused(
                Service.post(
                    "/v1/formulas/climate.declination",
                    "{\"inputs\": {\"dayOfYaer\": 1, \"a/b\": 2}}"),
                400,
                "wrong-fields")
            .path("errors");
    assertThat(errors.findValuesAsText("pointer"))
        .containsExactly("/inputs/dayOfYear", "/inputs/dayOfYaer", "/inputs/a~1b");
    Service.refused(Service.post("/v1/formulas/climate.declination", "{}"), 400, "wrong-fields");
    Service.refused(
        Service.post("/v1/formulas/climate.declination", "{\"inputs\": {\"dayOfYear\": 400}}"),
        400,
        "wrong-fields");
  }

  @Test
  void anUnknownFormulaIsAnsweredWithTheNearest() {
    JsonNode problem =
        Service.refused(
            Service.post("/v1/formulas/climate.declinations", "{\"inputs\": {}}"),
            404,
            "unknown-id");
    assertThat(problem.path("detail").asText()).contains("climate.declination");
  }

  @Test
  void everyFormulaAnswersOrSaysWhyNotAtTheEndsOfItsRange() {
    for (FormulaEntry formula : FormulaBook.standard().entries()) {
      works(formula, FormulaEntry.Parameter::low);
      works(formula, FormulaEntry.Parameter::high);
      works(formula, parameter -> parameter.low() / 2 + parameter.high() / 2);
    }
  }

  private static void works(FormulaEntry formula, ToDoubleFunction<FormulaEntry.Parameter> choice) {
    ObjectNode inputs = JsonNodeFactory.instance.objectNode();
    formula.parameters().forEach(p -> inputs.put(p.name(), choice.applyAsDouble(p)));
    Response response = Service.post("/v1/formulas/" + formula.id(), "{\"inputs\":" + inputs + "}");
    assertThat(response.statusCode()).as(formula.id() + inputs).isIn(200, 400);
    if (response.statusCode() == 200) {
      assertThat(Service.json(response).path("value").isNumber()).isTrue();
    } else {
      Service.refused(response, 400, "wrong-fields");
    }
  }

  /** A wrong type, a value out of range and an unknown name are all named at once. */
  @Test
  void everyWrongInputIsNamedInOneRound() {
    Response response =
        Service.post(
            "/v1/formulas/digester.stirred-conversion",
            "{\"inputs\":{\"rate\":\"fast\",\"retention\":-5,\"tanks\":1,\"lenght\":2}}");
    assertThat(Service.refused(response, 400, "wrong-fields").path("errors"))
        .extracting(error -> error.path("pointer").asText())
        .containsExactly("/inputs/rate", "/inputs/retention", "/inputs/lenght");
  }
}
