package org.marshlight.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.marshlight.contract.RecordOf.record;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientSet;

/** People who are away bring nothing: an invented holiday home, full in July, empty in winter. */
class AbsenceTest {

  private static final CoefficientSet CENTRAL = CoefficientBook.standard().central();
  private static final List<Double> SUMMER =
      List.of(0.0, 0.0, 0.0, 0.2, 0.5, 0.8, 1.0, 1.0, 0.4, 0.1, 0.0, 0.0);

  /** Fractions times the days of each month. */
  private static final double DAYS = 0.2 * 30 + 0.5 * 31 + 0.8 * 30 + 31 + 31 + 0.4 * 30 + 0.1 * 31;

  private static final PeopleDesign HOLIDAYS = people(SUMMER, Wastewater.ALL);
  private static final PeopleDesign RESIDENTS = people(null, Wastewater.ALL);

  private static PeopleDesign people(List<Double> present, Wastewater wastewater) {
    return record(
        PeopleDesign.class, "count", 5, "presentFraction", present, "wastewater", wastewater);
  }

  @Test
  void aMonthAwayGivesNoPersonDays() {
    assertThat(LoadModel.personDays(HOLIDAYS)).isCloseTo(5 * DAYS, within(1e-9));
    assertThat(LoadModel.personDays(RESIDENTS)).isEqualTo(5 * 365);
    assertThat(LoadModel.personDays(people(Collections.nCopies(12, 0.0), Wastewater.ALL))).isZero();
  }

  @Test
  void aMonthAwayBringsNothingAndTheYearIsTheMean() {
    List<Waste> away = LoadModel.toTank(HOLIDAYS, null, CENTRAL);
    List<Waste> always = LoadModel.toTank(RESIDENTS, null, CENTRAL);
    assertThat(away).hasSameSizeAs(always).isNotEmpty();
    for (int i = 0; i < away.size(); i++) {
      for (int month = 0; month < SUMMER.size(); month++) {
        assertSame(
            away.get(i).perDay().get(month),
            always.get(i).perDay().get(month).times(SUMMER.get(month)));
      }
      assertSame(away.get(i).annual(), always.get(i).annual().times(DAYS / 365));
    }
    assertThat(away.get(0).perDay().get(0).freshKg()).isZero();
  }

  @Test
  void greywaterBesideTheTankStaysAwayToo() {
    List<Matter> away =
        LoadModel.greywaterBesideTank(people(SUMMER, Wastewater.TOILET_ONLY), CENTRAL);
    List<Matter> always =
        LoadModel.greywaterBesideTank(people(null, Wastewater.TOILET_ONLY), CENTRAL);
    assertThat(always.get(0).freshKg()).isPositive();
    for (int month = 0; month < SUMMER.size(); month++) {
      assertSame(away.get(month), always.get(month).times(SUMMER.get(month)));
    }
  }

  private static void assertSame(Matter actual, Matter expected) {
    assertThat(actual.waterKg()).isCloseTo(expected.waterKg(), within(1e-9));
    assertThat(actual.codKg()).isCloseTo(expected.codKg(), within(1e-9));
    assertThat(actual.nitrogenKg()).isCloseTo(expected.nitrogenKg(), within(1e-9));
    assertThat(actual.phosphorusKg()).isCloseTo(expected.phosphorusKg(), within(1e-9));
  }
}
