package org.marshlight.http.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.WireName;
import org.marshlight.decision.Verdict;
import org.marshlight.economy.PlanPart;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;

/** Whatever the engine may name has a name in words, so that no report fails for want of one. */
class CodeWordsTest {

  private static final Texts TEXTS = Texts.in(Locale.ENGLISH);

  @Test
  void everyParameterThatAUseLimitsHasAName() {
    List<String> keys =
        CoefficientBook.standard().rows().stream()
            .map(CoefficientRow::id)
            .filter(id -> id.startsWith("wetland.limit."))
            .map(id -> id.replaceFirst("^wetland\\.limit\\.[a-z]+-", "parameter."))
            .map(key -> key.replaceFirst("-(strict|lenient)$", ""))
            .distinct()
            .toList();
    assertThat(keys).hasSizeGreaterThan(5).allMatch(TEXTS::has);
  }

  @Test
  void everyVerdictAndPartHasAName() {
    assertThat(names("component.", Verdict.Component.values())).allMatch(TEXTS::has);
    assertThat(names("answer.", Verdict.Worth.values())).allMatch(TEXTS::has);
    assertThat(names("field.money.capital.", PlanPart.values())).allMatch(TEXTS::has);
  }

  private static Stream<String> names(String beginning, Enum<?>[] values) {
    return Arrays.stream(values).map(value -> beginning + WireName.of(value));
  }
}
