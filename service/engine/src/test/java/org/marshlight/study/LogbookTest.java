package org.marshlight.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.marshlight.contract.Fault;

class LogbookTest {

  private final List<Fault> faults = new ArrayList<>();

  @Test
  void temperaturesAreMeansAndTheMetersRiseIsCutAtTheMonths() {
    String book =
        """
        date,liquorTemperatureC,gasMeterM3
        2026-01-01,10.0,100.0
        2026-01-15,12.0,
        2026-02-15,,145.0
        2026-03-01,14.5,159.0
        2026-03-20,,170.0
        """;
    List<Reading> readings = Logbook.readings(book, faults);
    assertThat(faults).isEmpty();
    assertThat(value(readings, ReadingKind.LIQUOR_TEMPERATURE, 1)).isEqualTo(11.0);
    assertThat(value(readings, ReadingKind.LIQUOR_TEMPERATURE, 3)).isEqualTo(14.5);
    assertThat(value(readings, ReadingKind.METERED_GAS, 1)).isCloseTo(31, within(1e-9));
    assertThat(value(readings, ReadingKind.METERED_GAS, 2)).isCloseTo(28, within(1e-9));
    assertThat(readings).hasSize(4).as("March is not over");
  }

  @Test
  void theSameMonthOfSeveralYearsCountsOnce() {
    String book =
        """
        date,gasMeterM3
        2024-02-01,0
        2024-03-01,29
        2025-02-01,40
        2025-03-01,96
        """;
    List<Reading> readings = Logbook.readings(book, faults);
    assertThat(value(readings, ReadingKind.METERED_GAS, 2))
        .as("28 days of one a day, and 56 of the other year")
        .isCloseTo(42, within(1e-9));
  }

  @Test
  void linesThatCannotBeReadAreNamed() {
    String book =
        """
        date,liquorTemperatureC
        2026-01-01,warm
        1 May 2026,12
        2026-02-30,12
        2026-03-01,1,2
        2026-04-01,3
        2026-04-01,4
        """;
    assertThat(Logbook.readings(book, faults)).isEmpty();
    assertThat(faults)
        .hasSize(5)
        .allSatisfy(f -> assertThat(f.code()).isEqualTo("study.logbook-line"));
    assertThat(faults).extracting(f -> f.params().get("line")).containsExactly(2L, 3L, 4L, 5L, 7L);
  }

  @Test
  void aMeterDoesNotRunBackwards() {
    Logbook.readings("date,gasMeterM3\n2026-01-01,5\n2026-02-01,4\n", faults);
    assertThat(faults).extracting(Fault::code).containsExactly("study.meter-backwards");
  }

  @Test
  void whatIsNoLogbookIsRefused() {
    Logbook.readings("day;gas\n1;2\n", faults);
    Logbook.readings("", faults);
    Logbook.readings("date\n2026-01-01\n", faults);
    Logbook.readings("date,date\n2026-01-01,1\n", faults);
    Logbook.readings("date,gasMeterM3\n\"2026-01-01,1\n", faults);
    assertThat(faults)
        .hasSize(5)
        .allSatisfy(f -> assertThat(f.code()).isEqualTo("study.logbook-columns"));
  }

  private static double value(List<Reading> readings, ReadingKind kind, int month) {
    return readings.stream()
        .filter(r -> r.kind() == kind && r.month() == month)
        .findFirst()
        .orElseThrow()
        .value();
  }
}
