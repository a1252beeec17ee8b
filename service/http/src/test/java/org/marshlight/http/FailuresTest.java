package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.marshlight.http.limits.Admission;

/** What is no fault of the client: failures of the service, and too much to do at once. */
@QuarkusTest
class FailuresTest {

  @Inject Admission admission;

  @ParameterizedTest
  @ValueSource(strings = {"in-the-route", "while-writing"})
  void unexpectedFailuresTellNothingOfTheHouse(String where) {
    Response response = Service.asking().get("/test-only/" + where);
    JsonNode problem = Service.refused(response, 500, "internal-error");
    assertThat(problem.toString()).doesNotContain("secret");
  }

  @Test
  void statusesThatHaveNoKindOfTheirOwnAreProblemsToo() {
    Service.refused(Service.asking().get("/test-only/in-the-framework"), 502, "failed");
  }

  @Test
  void aServiceThatIsFullSaysSoAtOnceAndServesAgainAfterwards() {
    CountDownLatch leave = new CountDownLatch(1);
    int places = admission.free();
    ExecutorService guests = Executors.newFixedThreadPool(places);
    try {
      for (int i = 0; i < places; i++) {
        guests.execute(() -> admission.admit(() -> stay(leave)));
      }
      Patience.until(() -> admission.free() == 0);
      Response response = Service.post("/v1/estimates/loop", Service.contractPlan());
      Service.refused(response, 503, "overloaded");
      assertThat(response.header("Retry-After")).matches("[1-9][0-9]*");
    } finally {
      leave.countDown();
      guests.shutdown();
      Patience.until(guests::isTerminated);
    }
    assertThat(admission.free()).isEqualTo(places);
    assertThat(Service.post("/v1/estimates/loop", Service.contractPlan()).statusCode())
        .isEqualTo(200);
  }

  private static boolean stay(CountDownLatch leave) {
    try {
      leave.await();
      return true;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
