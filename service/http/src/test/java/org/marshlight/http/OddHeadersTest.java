package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headers, methods and bodies that nobody sends in good faith. */
@QuarkusTest
class OddHeadersTest {

  private static final int LONGEST_WAIT_MS = 120_000;
  private static final int MOST_SENT = 256 * 1024 * 1024;

  @ParameterizedTest(name = "{0}: {1} gets {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "Accept | ; | 406",
        "Accept | , | 406",
        "Accept | ;q=1 | 406",
        "Accept | / | 406",
        "Accept | */*;q=NaN | 406",
        "Accept | */*;;q==; | 406",
        "Accept-Language | - | 200",
        "Accept-Language | -,eo | 200",
        "Accept-Language | ;;; | 400",
        "Accept-Language | en;q=9 | 400",
        "Accept-Language | en;q= | 400",
        "Accept-Language | *-*-x-,,i-- | 400",
        "Accept-Encoding | ; | 400",
        "Accept-Encoding | gzip;q=x | 400",
        "Accept-Encoding | *;q=-1,;q=0 | 400",
        "Accept-Charset | ; | 400",
        "If-None-Match | ,W/,;\" | 200",
        "If-Modified-Since | - | 200",
        "Range | bytes=- | 200",
        "Cookie | ;=; | 200",
        "Host | : | 200",
        "Origin | ; | 200",
        "X-Forwarded-For | ; | 200",
      })
  void areRefusedOrPassedOver(String name, String value, int status) throws IOException {
    String host = name.equals("Host") ? "" : "Host: a\r\n";
    String answer =
        RawRequest.send(
            "GET / HTTP/1.1\r\n"
                + host
                + "Connection: close\r\n"
                + name
                + ": "
                + value
                + "\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 " + status);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "If-Modified-Since: -",
        "Range: bytes=-",
        "Range: bytes=9-1",
        "Range: ;",
        "If-None-Match: ;",
      })
  void doNoHarmToTheFilesOfThePage(String header) throws IOException {
    assertThat(
            RawRequest.send(
                "GET /page/page.js HTTP/1.1\r\nHost: a\r\nConnection: close\r\n"
                    + header
                    + "\r\n\r\n"))
        .matches("(?s)HTTP/1.1 [234].*");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "application/json;",
        "application/json;;=",
        "application/json; charset=",
        "application/json; charset=no-such",
        "application/json; =\"",
      })
  void parametersOfATypeAreNotEvenRead(String type) throws IOException {
    assertThat(
            RawRequest.send(
                "POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nConnection: close\r\n"
                    + "Content-Type: "
                    + type
                    + "\r\nContent-Length: 2\r\n\r\n{}"))
        .startsWith("HTTP/1.1 400")
        .contains("wrong-fields");
  }

  @Test
  void methodsThatSomeoneMadeUpAreCountedAsOne() throws IOException {
    for (int i = 0; i < 5; i++) {
      RawRequest.send("BREW" + i + " /v1/feeds HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n");
    }
    String metrics = Service.asking().get("/q/metrics").asString();
    assertThat(metrics).contains("method=\"OTHER\"").doesNotContain("BREW");
  }

  @Test
  void aBodyThatGoesOnAfterItsRefusalIsNotReadToItsEnd() throws IOException {
    byte[] chunk = ("10000\r\n" + " ".repeat(0x10000) + "\r\n").getBytes(StandardCharsets.US_ASCII);
    try (Socket socket = new Socket("localhost", RestAssured.port)) {
      socket.setSoTimeout(LONGEST_WAIT_MS);
      OutputStream out = socket.getOutputStream();
      out.write(
          ("POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
                  + "Transfer-Encoding: chunked\r\n\r\n")
              .getBytes(StandardCharsets.US_ASCII));
      for (int i = 0; i < 20; i++) {
        out.write(chunk);
      }
      out.flush();
      InputStream in = socket.getInputStream();
      assertThat(new String(in.readNBytes(12), StandardCharsets.US_ASCII))
          .isEqualTo("HTTP/1.1 413");
      assertThat(sentUntilClosed(out, chunk)).isLessThan(MOST_SENT);
    }
  }

  private static long sentUntilClosed(OutputStream out, byte[] chunk) {
    long sent = 0;
    try {
      while (sent < MOST_SENT) {
        out.write(chunk);
        sent += chunk.length;
      }
    } catch (IOException closed) {
      return sent;
    }
    return sent;
  }
}
