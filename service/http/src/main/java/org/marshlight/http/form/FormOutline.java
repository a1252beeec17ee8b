package org.marshlight.http.form;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;

/**
 * The steps of the form and what is asked first, from {@code legs.csv} and {@code main.csv}. Fields
 * that these do not name are asked too, among the finer points.
 */
final class FormOutline {

  /** What the page has no fields for: a plan that holds it keeps it. */
  static final Set<String> KEPT = Set.of("site.hours", "given");

  /** Sections of a plan that count as there whenever one of their fields is filled. */
  static final Set<String> ALWAYS_OPEN = Set.of("site", "routes", "baseline");

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();

  private static final Set<String> MAIN = Set.copyOf(column("main.csv", "path"));
  private static final List<Step> STEPS = read();

  private FormOutline() {}

  /** The steps in the order of the flow. */
  static List<Step> steps() {
    return STEPS;
  }

  private static List<Step> read() {
    List<Step> steps = new ArrayList<>();
    List<String> legs = column("legs.csv", "leg");
    List<String> roots = column("legs.csv", "asks");
    List<String> answers = column("legs.csv", "answers");
    for (int i = 0; i < legs.size(); i++) {
      steps.add(new Step(legs.get(i), words(roots.get(i)), words(answers.get(i))));
    }
    return List.copyOf(steps);
  }

  /** Whether a field is asked first. */
  static boolean isMain(String path) {
    return MAIN.contains(path);
  }

  private static List<String> words(String cell) {
    return cell.isBlank() ? List.of() : List.of(cell.split(" "));
  }

  private static List<String> column(String file, String name) {
    List<String> cells = new ArrayList<>();
    try (Reader reader =
        new InputStreamReader(
            FormOutline.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
      FORMAT.parse(reader).forEach(row -> cells.add(row.get(name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return cells;
  }

  /**
   * A step.
   *
   * @param leg stable name
   * @param asks components of a plan
   * @param answers parts of the report
   */
  record Step(String leg, List<String> asks, List<String> answers) {}
}
