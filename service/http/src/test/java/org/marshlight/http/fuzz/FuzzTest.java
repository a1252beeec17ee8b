package org.marshlight.http.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongFunction;
import org.junit.jupiter.api.Test;

/**
 * Whatever is sent, the service answers or refuses it: no failure, no number that is not finite, no
 * balance that is open, and no caution in the header that the body lacks. A few hundred requests in
 * every build; {@code mvn verify -Pfuzz} sends thousands. Each has a seed of its own, which a
 * failure prints with the request as a command.
 */
@QuarkusTest
class FuzzTest {

  private static final long SEED = 20_261_201L * 100_000;
  private static final int MOST_PRINTED = 12;

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  @TestHTTPResource URI service;

  @Test
  void damagedRequestsAreAnsweredOrRefused() throws Exception {
    assertThat(faults(DamagedRequests::of, Integer.getInteger("fuzz.damaged"))).isEmpty();
  }

  @Test
  void extremeRequestsAreAnsweredOrRefused() throws Exception {
    assertThat(faults(ExtremeRequests::of, Integer.getInteger("fuzz.extreme"))).isEmpty();
  }

  private List<String> faults(LongFunction<FuzzRequest> requests, int count) throws Exception {
    List<String> found = new ArrayList<>();
    int answered = 0;
    for (int i = 0; i < count && found.size() < MOST_PRINTED; i++) {
      FuzzRequest request = requests.apply(SEED + i);
      HttpResponse<String> response = send(request);
      answered += response.statusCode() == 200 ? 1 : 0;
      List<String> faults = AnswerCheck.faults(response);
      if (!faults.isEmpty()) {
        found.add("seed " + request.seed() + ": " + faults + "\n" + request.curl() + "\n");
      }
    }
    assertThat(answered).as("answered of %d", count).isGreaterThan(count / 50);
    return found;
  }

  private HttpResponse<String> send(FuzzRequest request) throws IOException, InterruptedException {
    return client.send(request.to(service), HttpResponse.BodyHandlers.ofString());
  }
}
