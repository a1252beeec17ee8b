package org.marshlight.compost;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The rules on heat by table. 40 CFR 503 appendix B, from memory: windrows further reduce germs at
 * 55 Cel or more for 15 days or longer with at least five turnings; composting significantly
 * reduces them at 40 Cel or more for five days, of which more than four hours pass 55 Cel.
 */
class HygieneRulesTest {

  private static final HygieneRules RULES = Heaps.CENTRAL.bind(HygieneRules.class);

  @ParameterizedTest(name = "{0} to {2} days at 55 Cel, turned {3} times")
  @CsvSource({
    "15, 20, 30,  5, MET",
    "20, 40, 60, 12, MET",
    "14, 20, 30,  5, DOUBTFUL",
    "30, 20, 14,  5, DOUBTFUL",
    " 0,  0, 15,  5, DOUBTFUL",
    " 0, 10, 14,  5, NOT_MET",
    "15, 20, 30,  4, NOT_MET",
    "60, 60, 60,  4, NOT_MET",
    "60, 60, 60,  0, NOT_MET",
    " 0,  0,  0,  9, NOT_MET"
  })
  void furtherReductionNeedsDaysAndTurnings(
      double coolDays, double middleDays, double warmDays, double turnings, Hygiene expected) {
    HeapRange range = new HeapRange(hot(coolDays), hot(middleDays), hot(warmDays));
    assertThat(range.answer(course -> RULES.further(course, turnings))).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} days at 40 Cel with {1} hours at 55 Cel")
  @CsvSource({"5, 4.1, true", "5, 4, false", "4.9, 24, false", "30, 0, false", "30, 240, true"})
  void significantReductionNeedsWarmDaysAndHotHours(double days, double hours, boolean met) {
    assertThat(RULES.significant(new HeapCourse(60, days, hours / 24, 0))).isEqualTo(met);
  }

  private static HeapCourse hot(double days) {
    return new HeapCourse(60, days, days, 0);
  }

  /** The same manure and straw that meet the rule where they are turned. */
  @ParameterizedTest
  @EnumSource(CompostMethod.class)
  void aPileThatIsNotTurnedNeverMeetsTheRule(CompostMethod method) {
    CompostEstimate.HygieneFigures hygiene = manure(method);
    boolean turned = method == CompostMethod.TURNED_HEAP;
    assertThat(hygiene.turnings() > 0).isEqualTo(turned);
    assertThat(hygiene.furtherReduction()).isEqualTo(turned ? Hygiene.MET : Hygiene.NOT_MET);
  }

  @Test
  void withoutTurningNoHeatIsEnough() {
    assertThat(manure(CompostMethod.STATIC_HEAP).above55LowDays()).isGreaterThan(15);
  }

  private static CompostEstimate.HygieneFigures manure(CompostMethod method) {
    return CompostModel.run(
            Heaps.design(method, Heaps.of("horse-manure", 60_000), Heaps.of("straw", 10_000)),
            List.of(),
            Heaps.WARM,
            Heaps.CENTRAL)
        .estimate()
        .hygiene();
  }
}
