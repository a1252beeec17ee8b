package org.marshlight.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Pointer;

/** The readings of a request, from its list and from its logbook, each month once. */
final class Readings {

  private static final double PERCENT = 100;

  /** A meter that shows hardly anything is not known to a share of that. */
  private static final double LEAST_GAS_UNCERTAINTY_M3 = 0.01;

  private Readings() {}

  /**
   * Every reading with its uncertainty, by kind and month.
   *
   * @param request the request, filled
   * @param faults receives readings that make no sense
   */
  static List<Reading> of(CalibrationRequest request, List<Fault> faults) {
    List<Reading> readings = new ArrayList<>();
    List<Reading> stated = request.readings() == null ? List.of() : request.readings();
    for (int i = 0; i < stated.size(); i++) {
      add(stated.get(i), request, Pointer.child("/readings", i), readings, faults);
    }
    if (request.logbook() != null) {
      for (Reading reading : Logbook.readings(request.logbook(), faults)) {
        add(reading, request, "/logbook", readings, faults);
      }
    }
    if (readings.isEmpty() && faults.isEmpty()) {
      faults.add(Fault.of("study.no-readings", "/readings", null, "a reading, or a logbook"));
    }
    readings.sort(Comparator.comparing(Reading::kind).thenComparing(Reading::month));
    return List.copyOf(readings);
  }

  private static void add(
      Reading reading,
      CalibrationRequest request,
      String at,
      List<Reading> readings,
      List<Fault> faults) {
    ReadingKind kind = reading.kind();
    if (reading.value() < kind.low() || reading.value() > kind.high()) {
      faults.add(
          Fault.of(
              "study.impossible-reading",
              at + "/value",
              reading.value(),
              kind.low() + " to " + kind.high() + " " + kind.unit(),
              "low",
              kind.low(),
              "high",
              kind.high(),
              "unit",
              kind.unit()));
    }
    for (Reading other : readings) {
      if (other.kind() == kind && other.month().equals(reading.month())) {
        faults.add(
            Fault.of(
                "study.month-read-twice",
                at,
                reading.month(),
                "each month once of each kind",
                "month",
                reading.month()));
      }
    }
    double uncertainty =
        reading.uncertainty() != null ? reading.uncertainty() : usual(reading, request);
    readings.add(new Reading(kind, reading.month(), reading.value(), uncertainty));
  }

  private static double usual(Reading reading, CalibrationRequest request) {
    return reading.kind() == ReadingKind.LIQUOR_TEMPERATURE
        ? request.temperatureUncertaintyK()
        : Math.max(
            LEAST_GAS_UNCERTAINTY_M3, reading.value() * request.gasUncertaintyPercent() / PERCENT);
  }
}
