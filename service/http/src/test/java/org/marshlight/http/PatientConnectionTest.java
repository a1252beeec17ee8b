package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The timer ends connections that nobody uses, never one whose request is being worked. */
@QuarkusTest
@TestProfile(PatientConnectionTest.Impatient.class)
class PatientConnectionTest {

  /** A service whose timer is shorter than the test's slow route. */
  public static class Impatient implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("quarkus.http.idle-timeout", "1s");
    }
  }

  @Test
  void anAnswerThatTakesLongerThanTheTimerComes() {
    Response response = Service.asking().get("/test-only/slow");
    assertThat(response.statusCode()).isEqualTo(200);
    assertThat(response.asString()).isEqualTo("at last");
  }

  @Test
  void anAnswerThatIsSilentInBetweenComesWhole() {
    assertThat(Service.asking().get("/test-only/slow-lines").asString()).isEqualTo("first\nlast\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "GET / HTTP/1.1\r\nHost: a\r\n",
        "POST /v1/estimates/loop HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\n"
            + "Content-Length: 100\r\n\r\n{",
        "GET /q/health/live HTTP/1.1\r\nHost: a\r\n\r\n",
      })
  void aConnectionOnWhichNobodyWaitsIsEnded(String sent) throws IOException {
    try (Socket socket = new Socket("localhost", RestAssured.port)) {
      socket.setSoTimeout(Math.toIntExact(Patience.LONGEST.toMillis()));
      socket.getOutputStream().write(sent.getBytes(StandardCharsets.US_ASCII));
      InputStream answer = socket.getInputStream();
      answer.readAllBytes();
      assertThat(answer.read())
          .as("the end of the stream, not a timeout of this test")
          .isEqualTo(-1);
    }
  }
}
