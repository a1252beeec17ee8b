package org.marshlight.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Renders the published checks to {@code docs/validation.md} and holds the file to it. */
class ValidationTableTest {

  private static final MathContext SIX_DIGITS = new MathContext(6);

  @Test
  void theCommittedTableIsWhatTheChecksGive() {
    CommittedFile.expect("docs/validation.md", table(PublishedCheck.all()));
  }

  @Test
  void enoughChecksComeFromOutsideTheProject() {
    List<PublishedCheck> checks = PublishedCheck.all();
    assertThat(checks).hasSizeGreaterThanOrEqualTo(40);
    assertThat(checks.stream().filter(c -> c.mark() == Mark.PUBLISHED).count())
        .isGreaterThanOrEqualTo(25);
  }

  private static String table(List<PublishedCheck> checks) {
    StringBuilder text = new StringBuilder();
    long published = checks.stream().filter(c -> c.mark() == Mark.PUBLISHED).count();
    text.append("# Formulas held to published values\n\n")
        .append("Generated from the case files of the engine's tests; do not edit by hand.\n")
        .append("Each row is a test of its own: the formula, worked for the inputs of the case,\n")
        .append("must come within the tolerance of what the source says.\n\n")
        .append(checks.size())
        .append(" rows, of which ")
        .append(published)
        .append(" hold a value that was read in the source or in a faithful copy of it\n")
        .append("(mark: published). The others are recalled (from memory) or a fact of the trade\n")
        .append("(common practice).\n");
    Map<String, List<PublishedCheck>> byFile =
        checks.stream()
            .collect(
                Collectors.groupingBy(
                    PublishedCheck::file, java.util.TreeMap::new, Collectors.toList()));
    byFile.forEach(
        (file, rows) -> {
          text.append("\n## ").append(file).append("\n\n");
          text.append(
              "| case | formula | source | mark | expected | tolerance | got | relative error |\n");
          text.append("|---|---|---|---|---|---|---|---|\n");
          rows.forEach(row -> text.append(line(row)));
        });
    text.append("\n## Sources\n\n");
    checks.stream()
        .map(PublishedCheck::source)
        .distinct()
        .sorted()
        .map(id -> SourceList.standard().find(id).orElseThrow())
        .forEach(
            source ->
                text.append("- **")
                    .append(source.id())
                    .append("**: ")
                    .append(source.citation())
                    .append(". ")
                    .append(source.note())
                    .append('\n'));
    return text.toString();
  }

  private static String line(PublishedCheck check) {
    double got = check.got();
    String relative =
        check.expected() == 0
            ? "-"
            : String.format(
                java.util.Locale.ROOT, "%.1e", (got - check.expected()) / check.expected());
    return "| "
        + String.join(
            " | ",
            check.id() + (check.note().isEmpty() ? "" : " (" + check.note() + ")"),
            "`" + check.formula() + "`",
            check.source(),
            check.mark().words(),
            plain(check.expected()),
            plain(check.tolerance()),
            plain(got),
            relative)
        + " |\n";
  }

  private static String plain(double value) {
    return value == 0
        ? "0"
        : new BigDecimal(value).round(SIX_DIGITS).stripTrailingZeros().toString();
  }
}
