package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cases of RFC 7396, appendix A (recalled). */
class MergePatchTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
        "{\"a\":\"b\"} | {\"a\":null} | {}",
        "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
        "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
        "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
        "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[1]} | {\"a\":[1]}",
        "[\"a\",\"b\"] | [\"c\",\"d\"] | [\"c\",\"d\"]",
        "{\"a\":\"b\"} | [\"c\"] | [\"c\"]",
        "{\"a\":\"foo\"} | null | null",
        "{\"a\":\"foo\"} | \"bar\" | \"bar\"",
        "{\"e\":null} | {\"a\":1} | {\"e\":null,\"a\":1}",
        "[1,2] | {\"a\":\"b\",\"c\":null} | {\"a\":\"b\"}",
        "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}"
      })
  void merges(String target, String patch, String result) throws Exception {
    JsonNode before = JSON.readTree(target);
    assertThat(MergePatch.apply(before, JSON.readTree(patch))).isEqualTo(JSON.readTree(result));
    assertThat(before).isEqualTo(JSON.readTree(target));
  }
}
