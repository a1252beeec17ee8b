package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.contract.Fault;

/** What is no JSON document is refused with the place where reading stopped. */
class JsonDocumentTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\0',
      value = {
        "{\"a\": ; json.malformed",
        "{\"a\": tru} ; json.malformed",
        "{a: 1} ; json.malformed",
        "{'a': 1} ; json.malformed",
        "{\"a\": 01} ; json.malformed",
        "{\"a\": +1} ; json.malformed",
        "{\"a\": .5} ; json.malformed",
        "[1,] ; json.malformed",
        "] ; json.malformed",
        "{} // no ; json.trailing-text",
        "{} {} ; json.trailing-text",
        "{}} ; json.trailing-text",
        "\"\\ud800\" ; json.lone-surrogate",
        "{\"\\udc00\": 1} ; json.lone-surrogate",
      })
  void eachDefectHasItsCode(String text, String code) {
    assertThat(faultOf(text.getBytes(StandardCharsets.UTF_8)).code()).isEqualTo(code);
  }

  @Test
  void thePlaceIsTold() {
    Fault fault = faultOf("{\n  \"a\": 1,\n  \"b\" 2\n}".getBytes(StandardCharsets.UTF_8));
    assertThat(fault.params()).containsEntry("line", 3);
    assertThat(fault.detail()).contains("line 3").doesNotContain("com.").doesNotContain("Json");
  }

  @Test
  void emptyAndUndecodableBodiesAreTold() {
    assertThat(faultOf(new byte[0]).code()).isEqualTo("json.empty");
    assertThat(faultOf(" \n".getBytes(StandardCharsets.UTF_8)).code()).isEqualTo("json.empty");
    assertThat(faultOf(new byte[] {'"', (byte) 0xC3, '"'}).code()).isEqualTo("json.not-utf-8");
    assertThat(faultOf("{}".getBytes(StandardCharsets.UTF_16)).code()).isEqualTo("json.not-utf-8");
  }

  @Test
  void depthNamesAndNumbersAreBounded() {
    assertThat(faultOf(("[".repeat(40) + "]".repeat(40)).getBytes(StandardCharsets.UTF_8)).code())
        .isEqualTo("json.over-limit");
    assertThat(faultOf(("{\"" + "n".repeat(200) + "\":1}").getBytes(StandardCharsets.UTF_8)).code())
        .isEqualTo("json.over-limit");
    assertThat(faultOf(("1".repeat(200)).getBytes(StandardCharsets.UTF_8)).code())
        .isEqualTo("json.over-limit");
  }

  @Test
  void everyNameGivenTwiceIsFoundWhereItStands() {
    JsonDocument document =
        JsonDocument.parse(
            "{\"a\": [{\"x/y\": 1, \"x/y\": 2}], \"b\": 1, \"b\": 2}"
                .getBytes(StandardCharsets.UTF_8));
    assertThat(document.repeated()).extracting(Fault::pointer).containsExactly("/a/0/x~1y", "/b");
  }

  private static Fault faultOf(byte[] body) {
    MalformedJson thrown =
        catchThrowableOfType(MalformedJson.class, () -> JsonDocument.parse(body));
    assertThat(thrown).isInstanceOf(MalformedJson.class);
    return thrown.fault();
  }
}
