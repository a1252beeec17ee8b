package org.marshlight.study;

import java.util.ArrayList;
import java.util.List;
import org.marshlight.decision.Reason;
import org.marshlight.study.CalibrationStudy.ComparedMonth;
import org.marshlight.study.CalibrationStudy.Place;

/** What to look at where readings lie outside of what was to be expected. */
final class LikelyCauses {

  private LikelyCauses() {}

  /** The causes, those of the temperature first: gas follows warmth. */
  static List<Reason> of(List<ComparedMonth> months) {
    List<Reason> causes = new ArrayList<>();
    long colder = count(months, ReadingKind.LIQUOR_TEMPERATURE, Place.BELOW);
    long warmer = count(months, ReadingKind.LIQUOR_TEMPERATURE, Place.ABOVE);
    long less = count(months, ReadingKind.METERED_GAS, Place.BELOW);
    long more = count(months, ReadingKind.METERED_GAS, Place.ABOVE);
    if (colder > 0) {
      causes.add(Reason.of("study.cause-colder", "months", colder));
    }
    if (warmer > 0) {
      causes.add(Reason.of("study.cause-warmer", "months", warmer));
    }
    if (less > 0 && colder > 0) {
      causes.add(Reason.of("study.cause-less-gas-cold", "months", less));
    }
    if (less > 0 && colder == 0) {
      causes.add(Reason.of("study.cause-less-gas", "months", less));
    }
    if (more > 0) {
      causes.add(Reason.of("study.cause-more-gas", "months", more));
    }
    return List.copyOf(causes);
  }

  private static long count(List<ComparedMonth> months, ReadingKind kind, Place place) {
    return months.stream().filter(m -> m.kind() == kind && m.place() == place).count();
  }
}
