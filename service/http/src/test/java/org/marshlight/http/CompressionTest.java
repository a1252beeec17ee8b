package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.marshlight.http.studies.StudyFloor;

/** Answers come compressed to those who ask for it (RFC 9110, section 8.4). */
@QuarkusTest
class CompressionTest {

  private static final String STUDY =
      "{\"plan\":{\"site\":{\"climate\":{\"id\":\"burlington\"}},\"people\":{},\"tank\":{}},"
          + "\"draws\":16384}";

  @Inject StudyFloor floor;

  private final HttpClient client = HttpClient.newHttpClient();

  private HttpResponse<byte[]> ask(
      String method, String path, String accept, String encoding, String body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + path))
            .header("Accept", accept)
            .header("Accept-Encoding", encoding)
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  private static String body(String path) {
    return path.contains("/estimates/") ? Service.contractPlan() : "";
  }

  @ParameterizedTest(name = "{0} {1} as {2}")
  @CsvSource({
    "GET, /, text/html",
    "GET, /problems, text/html",
    "GET, /page/page.js, */*",
    "GET, /page/form.css, */*",
    "GET, /v1/feeds, application/json",
    "GET, /v1/feeds/nope, application/json",
    "GET, /nope, */*",
    "DELETE, /v1/feeds, application/json",
    "GET, /q/openapi, application/json",
    "POST, /v1/estimates/loop, application/json",
    "POST, /v1/estimates/loop, text/csv",
    "POST, /v1/estimates/loop, text/html",
  })
  void ofEveryKind(String method, String path, String accept) throws Exception {
    HttpResponse<byte[]> plain = ask(method, path, accept, "identity", body(path));
    HttpResponse<byte[]> small = ask(method, path, accept, "gzip", body(path));
    assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
    assertThat(small.headers().firstValue("Content-Encoding")).contains("gzip");
    for (HttpResponse<byte[]> answer : new HttpResponse[] {plain, small}) {
      assertThat(answer.headers().firstValue("Vary").orElse("")).contains("Accept-Encoding");
      assertThat(answer.headers().firstValue("Cautions")).isPresent();
    }
    assertThat(unpacked(small.body())).isEqualTo(plain.body());
    assertThat(small.body().length).isLessThan(plain.body().length);
  }

  @Test
  void aClientThatHasTheAnswerIsToldSoWhateverItsEncoding() throws Exception {
    String tag =
        ask("GET", "/v1/soils", "*/*", "gzip", "").headers().firstValue("ETag").orElseThrow();
    assertThat(tag).startsWith("W/");
    for (String encoding : new String[] {"gzip", "identity"}) {
      HttpResponse<Void> known =
          client.send(
              HttpRequest.newBuilder(
                      URI.create("http://localhost:" + RestAssured.port + "/v1/soils"))
                  .header("Accept-Encoding", encoding)
                  .header("If-None-Match", tag)
                  .build(),
              HttpResponse.BodyHandlers.discarding());
      assertThat(known.statusCode()).isEqualTo(304);
      assertThat(known.headers().firstValue("ETag")).contains(tag);
      assertThat(known.headers().firstValue("Vary").orElse("")).contains("Accept-Encoding");
    }
  }

  /** The first line can be unpacked while the study is still under way. */
  @Test
  void aCompressedStreamIsStillToldLineByLine() throws Exception {
    int places = floor.free();
    HttpRequest request =
        HttpRequest.newBuilder(
                URI.create("http://localhost:" + RestAssured.port + "/v1/studies/uncertainty"))
            .header("Accept", "application/x-ndjson")
            .header("Accept-Encoding", "gzip")
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(STUDY))
            .build();
    HttpResponse<InputStream> answer =
        client.send(request, HttpResponse.BodyHandlers.ofInputStream());
    assertThat(answer.headers().firstValue("Content-Encoding")).contains("gzip");
    try (InputStream lines = new GZIPInputStream(answer.body(), 64)) {
      assertThat(line(lines)).startsWith("{\"cost\"").contains("\"cautions\"");
      assertThat(floor.free()).as("places while the study is worked").isLessThan(places);
      assertThat(line(lines)).startsWith("{\"done\"").doesNotContain("\"done\":16384");
    }
  }

  private static String line(InputStream in) throws IOException {
    StringBuilder line = new StringBuilder();
    for (int read = in.read(); read != '\n' && read >= 0; read = in.read()) {
      line.append((char) read);
    }
    return line.toString();
  }

  private static byte[] unpacked(byte[] packed) throws IOException {
    try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    }
  }
}
