package org.marshlight.http.door;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which form a client gets, by the rules of RFC 9110, section 12.5.1. */
class AcceptedTest {

  private static final List<String> FORMS = List.of("application/json", "text/csv", "text/html");

  @ParameterizedTest(name = "\"{0}\" gets {1}")
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '\'',
      nullValues = "none",
      value = {
        "'' ; application/json",
        "'*/*' ; application/json",
        "'text/csv' ; text/csv",
        "'TEXT/HTML' ; text/html",
        "'text/*' ; text/csv",
        "'application/*' ; application/json",
        "'text/html, text/csv' ; text/csv",
        "'text/csv;q=0.5, text/html;q=0.8' ; text/html",
        "'text/csv; q=0.9; header=present, application/json; q=0.1' ; text/csv",
        "'application/json;q=0, */*;q=0.1' ; text/csv",
        "'text/*;q=0.9, text/csv;q=0.1' ; text/html",
        "'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8' ; text/html",
        "'image/png' ; none",
        "'*/*;q=0' ; none",
        "'text/csv;q=banana' ; none",
        "'nonsense' ; none",
        "';' ; none",
        "',' ; none",
      })
  void theFormThatTheClientLikesBest(String accept, String form) {
    assertThat(Accepted.best(accept, FORMS).orElse(null)).isEqualTo(form);
  }
}
