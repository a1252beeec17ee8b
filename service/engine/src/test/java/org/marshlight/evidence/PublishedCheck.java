package org.marshlight.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * One row of a case file: a formula, inputs, and what a source outside the project says comes out.
 *
 * @param file name of the case file
 * @param id name of the case
 * @param formula id of the formula
 * @param inputs inputs by parameter name
 * @param expected value of the source
 * @param tolerance greatest absolute difference, as the source's rounding or scatter allows
 * @param source id of the source
 * @param mark how well founded the expected value is
 * @param read whether the value was read in the source or in a faithful copy of it
 * @param note place in the source, or why the tolerance is what it is
 */
record PublishedCheck(
    String file,
    String id,
    String formula,
    Map<String, Double> inputs,
    double expected,
    double tolerance,
    String source,
    Mark mark,
    boolean read,
    String note) {

  private static final Path CASES = Path.of("src/test/resources/checks");

  /** Every case of every file, files in alphabetical order. */
  static List<PublishedCheck> all() {
    List<PublishedCheck> checks = new ArrayList<>();
    try (Stream<Path> files = Files.list(CASES)) {
      for (Path file : files.sorted().toList()) {
        CSVFormat format =
            CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .setTrim(true)
                .get();
        try (var parser = format.parse(Files.newBufferedReader(file, StandardCharsets.UTF_8))) {
          for (CSVRecord row : parser) {
            checks.add(of(file.getFileName().toString().replace(".csv", ""), row));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return checks;
  }

  /** What the engine's formula gives. */
  double got() {
    return FormulaBook.standard().evaluate(formula, inputs);
  }

  private static PublishedCheck of(String file, CSVRecord row) {
    Map<String, Double> inputs = new LinkedHashMap<>();
    for (String input : row.get("inputs").split(";")) {
      String[] pair = input.trim().split("=");
      inputs.put(pair[0].trim(), Double.valueOf(pair[1].trim()));
    }
    return new PublishedCheck(
        file,
        row.get("id"),
        row.get("formula"),
        inputs,
        Double.parseDouble(row.get("expected")),
        Double.parseDouble(row.get("tolerance")),
        row.get("source"),
        Mark.ofWords(row.get("mark")),
        row.get("read").equals("yes"),
        row.get("note"));
  }
}
