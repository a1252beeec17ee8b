package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.marshlight.evidence.CommittedFile;
import org.marshlight.http.contract.Sample;

/** Sends every sample and holds the whole answer to the one that is committed beside it. */
@QuarkusTest
class SampleRequestsTest {

  private static final String FOLDER = "sample-requests/";
  private static final double NEAR = 1e-9;

  /** A number followed by the UCUM code of what has no unit, as in "3 1 is assumed". */
  private static final Pattern BARE_CODE = Pattern.compile("\\d 1(?![\\d.]*\\d)(?=\\W|$)");

  static Stream<Sample> samples() {
    return Sample.all().stream();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("samples")
  void theAnswerIsTheCommittedOne(Sample sample) throws IOException {
    Response response = send(sample);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(sample.status());
    Service.cautioned(response);
    if (response.contentType().contains("json")) {
      json(sample, response);
    } else if (response.contentType().startsWith("text/csv")) {
      table(sample, response);
    } else {
      assertThat(response.contentType()).startsWith(sample.accept());
      CommittedFile.expect(FOLDER + sample.name() + ".expected.html", response.asString());
    }
  }

  @Test
  void everySampleIsInTheIndexAndSaysThatItIsInvented() throws IOException {
    List<String> names = Sample.all().stream().map(Sample::name).toList();
    assertThat(names).doesNotHaveDuplicates();
    try (Stream<Path> files = Files.list(Service.SAMPLES)) {
      assertThat(
              files
                  .map(file -> file.getFileName().toString())
                  .filter(file -> !file.equals("index.csv"))
                  .map(file -> file.replaceAll("(\\.expected)?(\\.[a-z]+)+$", "")))
          .allMatch(names::contains);
    }
    assertThat(Sample.all().stream().filter(sample -> sample.body().contains("\"site\"")))
        .allMatch(sample -> sample.body().contains("\"Invented demo: "));
  }

  private static Response send(Sample sample) {
    var request = Service.asking().header("Accept", sample.accept());
    return sample.body().isEmpty()
        ? request.request(sample.method(), sample.path())
        : request
            .contentType(sample.bodyType())
            .body(sample.body().getBytes(StandardCharsets.UTF_8))
            .request(sample.method(), sample.path());
  }

  private static void json(Sample sample, Response response) throws IOException {
    String file = FOLDER + sample.name() + ".expected.json";
    JsonNode got = Service.json(response);
    assertThat(got.findValuesAsText("text")).noneMatch(BARE_CODE.asPredicate());
    assertThat(got.findValuesAsText("detail")).noneMatch(BARE_CODE.asPredicate());
    assertThat(got.findValuesAsText("allowed")).noneMatch(BARE_CODE.asPredicate());
    if (Boolean.getBoolean("update")) {
      CommittedFile.expect(file, readable(got));
      return;
    }
    JsonNode expected =
        Service.JSON.readTree(
            Files.readString(Service.SAMPLES.resolve(sample.name() + ".expected.json")));
    assertThat(difference(expected, got, ""))
        .as("%s; run: mvn verify -Dupdate=true", file)
        .isEmpty();
  }

  private static String readable(JsonNode node) throws IOException {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    ObjectWriter writer = Service.JSON.writer(printer);
    return writer.writeValueAsString(node) + "\n";
  }

  private static void table(Sample sample, Response response) throws IOException {
    String file = FOLDER + sample.name() + ".expected.csv";
    if (Boolean.getBoolean("update")) {
      CommittedFile.expect(file, response.asString());
      return;
    }
    List<CSVRecord> expected =
        rows(Files.readString(Service.SAMPLES.resolve(sample.name() + ".expected.csv")));
    List<CSVRecord> got = rows(response.asString());
    assertThat(got).as("%s; run: mvn verify -Dupdate=true", file).hasSameSizeAs(expected);
    for (int i = 0; i < got.size(); i++) {
      assertThat(got.get(i).size()).isEqualTo(expected.get(i).size());
      for (int column = 0; column < expected.get(i).size(); column++) {
        assertThat(same(expected.get(i).get(column), got.get(i).get(column)))
            .as("%s row %d: expected %s, got %s", file, i, expected.get(i), got.get(i))
            .isTrue();
      }
    }
  }

  private static List<CSVRecord> rows(String csv) throws IOException {
    try (var parser = CSVFormat.RFC4180.parse(new java.io.StringReader(csv))) {
      return parser.getRecords();
    }
  }

  private static boolean same(String expected, String got) {
    return expected.equals(got)
        || isNumber(expected)
            && isNumber(got)
            && near(Double.parseDouble(expected), Double.parseDouble(got));
  }

  private static boolean isNumber(String text) {
    return text.matches("-?\\d+(\\.\\d+)?(E-?\\d+)?");
  }

  /** The first difference, or an empty text. */
  private static String difference(JsonNode expected, JsonNode got, String at) {
    if (expected.isNumber() && got.isNumber()) {
      return near(expected.doubleValue(), got.doubleValue()) ? "" : told(expected, got, at);
    }
    if (!expected.isContainerNode() || expected.getNodeType() != got.getNodeType()) {
      return expected.equals(got) ? "" : told(expected, got, at);
    }
    if (expected.size() != got.size()) {
      return told(expected, got, at);
    }
    if (expected.isArray()) {
      for (int i = 0; i < expected.size(); i++) {
        String found = difference(expected.get(i), got.get(i), at + "/" + i);
        if (!found.isEmpty()) {
          return found;
        }
      }
      return "";
    }
    for (var field : expected.properties()) {
      String found =
          difference(field.getValue(), got.path(field.getKey()), at + "/" + field.getKey());
      if (!found.isEmpty()) {
        return found;
      }
    }
    return "";
  }

  private static String told(JsonNode expected, JsonNode got, String at) {
    return "at " + at + ": expected " + cut(expected) + ", got " + cut(got);
  }

  private static String cut(JsonNode node) {
    String text = node.toString();
    return text.length() > 200 ? text.substring(0, 200) + "..." : text;
  }

  /** Equal to nine digits; figures that are nought but for rounding are equal too. */
  private static boolean near(double expected, double got) {
    double greatest = Math.max(Math.abs(expected), Math.abs(got));
    return greatest < NEAR || Math.abs(expected - got) <= NEAR * greatest;
  }
}
