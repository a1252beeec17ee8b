package org.marshlight.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.marshlight.contract.Fault;
import org.marshlight.contract.Months;

/**
 * Readings as a household writes them down: a date, and on some of the lines the temperature of the
 * liquor and where the gas meter stands. They are reduced to months: temperatures to their mean,
 * the meter to its rise over each month that lies wholly between two readings, straight between
 * readings. The same month of several years counts once, with its mean.
 */
final class Logbook {

  private static final String DATE = "date";
  private static final String TEMPERATURE = "liquorTemperatureC";
  private static final String METER = "gasMeterM3";
  private static final List<String> COLUMNS = List.of(DATE, TEMPERATURE, METER);
  private static final int MOST_FAULTS = 50;

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .setTrim(true)
          .get();

  private final TreeMap<LocalDate, Double> temperatures = new TreeMap<>();
  private final TreeMap<LocalDate, Double> meter = new TreeMap<>();
  private final List<Fault> faults;

  private Logbook(List<Fault> faults) {
    this.faults = faults;
  }

  /**
   * The monthly readings of a logbook, without uncertainties.
   *
   * @param text comma-separated values with a header
   * @param faults receives lines that make no sense
   */
  static List<Reading> readings(String text, List<Fault> faults) {
    Logbook book = new Logbook(faults);
    int before = faults.size();
    book.read(text);
    return faults.size() > before ? List.of() : book.months();
  }

  private void read(String text) {
    try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
      List<String> header = parser.getHeaderNames();
      boolean once = new HashSet<>(header).size() == header.size();
      if (!once || !COLUMNS.containsAll(header) || !header.contains(DATE) || header.size() < 2) {
        faults.add(
            Fault.of(
                "study.logbook-columns",
                "/logbook",
                String.join(",", header),
                String.join(",", COLUMNS)));
        return;
      }
      for (CSVRecord line : parser) {
        if (faults.size() < MOST_FAULTS) {
          line(line);
        }
      }
    } catch (IOException | IllegalArgumentException | UncheckedIOException e) {
      faults.add(Fault.of("study.logbook-columns", "/logbook", null, String.join(",", COLUMNS)));
    }
    forwards();
  }

  private void line(CSVRecord line) {
    if (!line.isConsistent()) {
      wrong(line, "", "as many values as columns");
      return;
    }
    LocalDate date;
    try {
      date = LocalDate.parse(line.get(DATE));
    } catch (DateTimeParseException e) {
      wrong(line, line.get(DATE), "a date such as 2026-01-31");
      return;
    }
    number(line, TEMPERATURE, date, temperatures);
    number(line, METER, date, meter);
  }

  private void number(
      CSVRecord line, String column, LocalDate date, Map<LocalDate, Double> values) {
    if (!line.isMapped(column) || line.get(column).isEmpty()) {
      return;
    }
    try {
      double value = Double.parseDouble(line.get(column));
      if (!Double.isFinite(value)) {
        wrong(line, line.get(column), "a number");
      } else if (values.put(date, value) != null) {
        wrong(line, line.get(DATE), "each date once");
      }
    } catch (NumberFormatException e) {
      wrong(line, line.get(column), "a number, or nothing");
    }
  }

  /** A meter that is lower than before was reset or misread. */
  private void forwards() {
    Map.Entry<LocalDate, Double> before = null;
    for (Map.Entry<LocalDate, Double> reading : meter.entrySet()) {
      if (before != null && reading.getValue() < before.getValue()) {
        faults.add(
            Fault.of(
                "study.meter-backwards",
                "/logbook",
                reading.getValue(),
                "at least " + before.getValue() + " m3",
                "date",
                reading.getKey().toString(),
                "before",
                before.getValue()));
      }
      before = reading;
    }
  }

  private void wrong(CSVRecord line, String rejected, String allowed) {
    faults.add(
        Fault.of(
            "study.logbook-line",
            "/logbook",
            rejected,
            allowed,
            "line",
            line.getRecordNumber() + 1,
            "allowed",
            allowed));
  }

  private List<Reading> months() {
    List<Reading> readings = new ArrayList<>();
    for (int month = 1; month <= Months.COUNT; month++) {
      add(ReadingKind.LIQUOR_TEMPERATURE, month, meanTemperature(month), readings);
      add(ReadingKind.METERED_GAS, month, meanRise(month), readings);
    }
    return readings;
  }

  private static void add(ReadingKind kind, int month, double value, List<Reading> readings) {
    if (!Double.isNaN(value)) {
      readings.add(new Reading(kind, month, value, null));
    }
  }

  private double meanTemperature(int month) {
    return temperatures.entrySet().stream()
        .filter(reading -> reading.getKey().getMonthValue() == month)
        .mapToDouble(Map.Entry::getValue)
        .average()
        .orElse(Double.NaN);
  }

  /** Mean rise of the meter over that month of each year, brought to a month of 365-day years. */
  private double meanRise(int month) {
    if (meter.isEmpty()) {
      return Double.NaN;
    }
    double sum = 0;
    int years = 0;
    for (int year = meter.firstKey().getYear(); year <= meter.lastKey().getYear(); year++) {
      YearMonth of = YearMonth.of(year, month);
      LocalDate from = of.atDay(1);
      LocalDate to = from.plusMonths(1);
      if (!meter.firstKey().isAfter(from) && !meter.lastKey().isBefore(to)) {
        double rise = stand(to) - stand(from);
        sum += rise * Months.days(month - 1) / of.lengthOfMonth();
        years++;
      }
    }
    return years == 0 ? Double.NaN : sum / years;
  }

  private double stand(LocalDate date) {
    Map.Entry<LocalDate, Double> before = meter.floorEntry(date);
    Map.Entry<LocalDate, Double> after = meter.ceilingEntry(date);
    double between = after.getKey().toEpochDay() - before.getKey().toEpochDay();
    double gone = date.toEpochDay() - before.getKey().toEpochDay();
    return between == 0
        ? before.getValue()
        : before.getValue() + (after.getValue() - before.getValue()) * gone / between;
  }
}
