package org.marshlight.http.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The table is also what the page's scripts are checked against. */
class TypedNumberTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "typed-numbers.csv",
      numLinesToSkip = 1,
      delimiter = ',',
      quoteCharacter = '"')
  void aTypedTextIsReadAsOneNumberOrNone(String typed, Double value) {
    OptionalDouble expected = value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    assertThat(TypedNumber.of(typed)).isEqualTo(expected);
  }
}
