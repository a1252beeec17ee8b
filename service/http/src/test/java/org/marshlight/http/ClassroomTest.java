package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** The answers of the classroom's exercises, each asked of the service as a class would. */
@QuarkusTest
class ClassroomTest {

  private static final Path LESSON =
      Path.of(System.getProperty("repository"), "docs", "classroom.md");
  private static final int FEWEST_EXERCISES = 8;

  @Test
  void everyAnswerOfTheKeyIsWhatTheServiceGives() throws IOException {
    List<Answer> key = key();
    assertThat(key.stream().map(Answer::exercise).distinct())
        .hasSizeGreaterThanOrEqualTo(FEWEST_EXERCISES);
    for (Answer answer : key) {
      double value =
          Service.json(Service.post("/v1/formulas/" + answer.formula(), answer.body()))
              .path("value")
              .asDouble(Double.NaN);
      BigDecimal printed = new BigDecimal(answer.printed());
      double half = 0.501 * printed.ulp().doubleValue();
      assertThat(value).as(answer.toString()).isCloseTo(printed.doubleValue(), Offset.offset(half));
    }
  }

  private static List<Answer> key() throws IOException {
    return Files.readAllLines(LESSON).stream()
        .filter(line -> line.matches("\\| \\d+ \\|.*"))
        .map(line -> line.split("\\s*\\|\\s*"))
        .filter(cells -> cells.length == 6)
        .map(cells -> new Answer(cells[1], cells[2], cells[3], cells[4]))
        .toList();
  }

  /** A row of the key. */
  private record Answer(String exercise, String formula, String inputs, String printed) {

    private String body() {
      ObjectNode body = Service.JSON.createObjectNode();
      ObjectNode sent = body.putObject("inputs");
      Arrays.stream(inputs.split(";"))
          .map(input -> input.split("="))
          .forEach(input -> sent.put(input[0], new BigDecimal(input[1])));
      return body.toString();
    }
  }
}
