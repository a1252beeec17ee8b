package org.marshlight.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** The running service as a client sees it. */
final class Service {

  static final ObjectMapper JSON = new ObjectMapper();
  static final Path SAMPLES = Path.of(System.getProperty("repository"), "sample-requests");

  private Service() {}

  /** The plan of the contract, as it stands in the sample requests. */
  static String contractPlan() {
    try {
      return Files.readString(SAMPLES.resolve("loop-hill-smallholding.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static RequestSpecification asking() {
    return given()
        .config(
            RestAssured.config()
                .encoderConfig(
                    EncoderConfig.encoderConfig()
                        .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
        .urlEncodingEnabled(false);
  }

  static Response post(String path, String body) {
    return post(path, body.getBytes(StandardCharsets.UTF_8), "application/json");
  }

  static Response post(String path, byte[] body, String contentType) {
    return asking().contentType(contentType).body(body).post(path);
  }

  static JsonNode json(Response response) {
    try {
      return JSON.readTree(response.asByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Holds a response to what every refusal must be, and gives its problem document. */
  static JsonNode refused(Response response, int status, String code) {
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
    assertThat(response.contentType()).isEqualTo("application/problem+json");
    assertThat(response.asString())
        .doesNotContain("Exception")
        .doesNotContain("java.")
        .doesNotContain("org.marshlight");
    JsonNode problem = json(response);
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("code").asText()).isEqualTo(code);
    assertThat(problem.path("type").asText()).isEqualTo("/problems#" + code);
    assertThat(problem.path("title").asText()).isNotBlank();
    assertThat(problem.path("detail").asText()).isNotBlank();
    assertThat(problem.path("errors").isArray()).isTrue();
    assertThat(problem.path("cautions")).isNotEmpty();
    cautioned(response);
    return problem;
  }

  /** Holds a response to the headers that stand on every response. */
  static void cautioned(Response response) {
    assertThat(response.header("Cautions"))
        .contains("methane-explosion", "tank-atmosphere", "pathogens", "local-codes");
    assertThat(response.header("Link")).isEqualTo("</v1/cautions>; rel=\"help\"");
    assertThat(response.header("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(response.header("Content-Security-Policy")).startsWith("default-src 'none'");
  }
}
