package org.marshlight.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The canonical form, held to the examples printed in RFC 8785 (from memory). */
class CanonicalHashTest {

  @Test
  void literalsNumbersAndTextsOfSection322() {
    String sent =
        """
        {
          "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
          "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
          "literals": [null, true, false]
        }""";
    assertThat(canonical(sent))
        .isEqualTo(
            "{\"literals\":[null,true,false],"
                + "\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
  }

  @Test
  void namesAreSortedByCodeUnitsAsInSection323() {
    String sent =
        "{\"\\u20ac\":1,\"\\r\":2,\"\\ufb33\":3,\"1\":4,\"\\ud83d\\ude00\":5,\"\\u0080\":6,\"\\u00f6\":7}";
    assertThat(canonical(sent))
        .isEqualTo(
            "{\"\\r\":2,\"1\":4,\"\u0080\":6,\"\u00f6\":7,\"\u20ac\":1,\"\ud83d\ude00\":5,\"\ufb33\":3}");
  }

  @ParameterizedTest(name = "{0} is written {1}")
  @CsvSource({
    "-0, 0",
    "4.9406564584124654e-324, 5e-324",
    "1.7976931348623157e308, 1.7976931348623157e+308",
    "9007199254740992, 9007199254740992",
    "1e21, 1e+21",
    "9.999999999999997e22, 9.999999999999997e+22",
    "333333333.3333332, 333333333.3333332",
    "0.000001, 0.000001",
  })
  void numbersOfAppendixB(String sent, String canonical) {
    assertThat(canonical("[" + sent + "]")).isEqualTo("[" + canonical + "]");
  }

  @Test
  void layoutAndOrderDoNotChangeTheHash() {
    assertThat(CanonicalHash.sha256("{ \"b\": 1.0,\n \"a\": \"\\u0041\" }"))
        .isEqualTo(CanonicalHash.sha256("{\"a\":\"A\",\"b\":1}"));
  }

  /** The message "abc" of FIPS 180-4's worked example (from memory). */
  @Test
  void theHashIsSha256() {
    assertThat(CanonicalHash.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  private static String canonical(String json) {
    return new String(CanonicalHash.canonical(json), StandardCharsets.UTF_8);
  }
}
