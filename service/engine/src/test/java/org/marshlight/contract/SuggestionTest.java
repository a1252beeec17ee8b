package org.marshlight.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.digester.GasPurpose;
import org.marshlight.evidence.Catalogues;

/** A name is offered only where it was probably meant. */
class SuggestionTest {

  @ParameterizedTest
  @CsvSource({
    "cow-dung, cattle-manure",
    "chicken droppings, poultry-manure",
    "sheep-manure, goat-manure",
    "kitchen-scrap, kitchen-scraps",
    "wehy, whey",
    "vegetable-peelings, vegetable-trimmings"
  })
  void aWasteThatWasProbablyMeantIsOffered(String sent, String meant) {
    assertThat(Suggestion.closeTo(sent, Catalogues.standard().ids("feeds"))).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"generator, engine", "coking, cooking", "water-heater, hot-water", "lmap, lamp"})
  void aUseThatWasProbablyMeantIsOffered(String sent, String meant) {
    assertThat(Suggestion.closeTo(sent, WireName.all(GasPurpose.class))).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"plutonium", "x", "zzzzzzzzzzzzzzzzzzz"})
  void whereNothingIsCloseTheChoicesAreListed(String sent) {
    List<String> known = WireName.all(GasPurpose.class);
    assertThat(Suggestion.closeTo(sent, known)).isEmpty();
    assertThat(Suggestion.sentence(sent, known))
        .isEqualTo("Allowed: " + String.join(", ", known) + ".");
  }

  @Test
  void aLongListIsNotRepeated() {
    List<String> known = IntStream.range(0, 100).mapToObj(i -> "name-" + i).toList();
    assertThat(Suggestion.sentence("entirely other", known)).contains("100").hasSizeLessThan(100);
  }
}
