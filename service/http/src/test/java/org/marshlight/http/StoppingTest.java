package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.runtime.ShutdownDelayInitiatedEvent;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A service that was asked to stop finishes what it began and begins nothing. */
@QuarkusTest
@TestProfile(StoppingTest.OfItsOwn.class)
class StoppingTest {

  /** A service that no other test asks anything, for it does not start again. */
  public static class OfItsOwn implements QuarkusTestProfile {}

  @Inject Event<ShutdownDelayInitiatedEvent> told;

  @Test
  void nothingNewIsTakenAndWhatIsUnderWayIsAnswered() throws Exception {
    CompletableFuture<Response> underWay =
        CompletableFuture.supplyAsync(() -> Service.asking().get("/test-only/held"));
    assertThat(Failing.HELD.tryAcquire(2, TimeUnit.MINUTES)).isTrue();
    told.fire(new ShutdownDelayInitiatedEvent());
    for (String path : new String[] {"/", "/v1/feeds", "/nope"}) {
      Response refused = Service.asking().get(path);
      Service.refused(refused, 503, "stopping");
      assertThat(refused.header("Connection")).isEqualToIgnoringCase("close");
      assertThat(refused.header("Retry-After")).matches("[1-9][0-9]*");
    }
    Service.refused(Service.post("/v1/estimates/loop", Service.contractPlan()), 503, "stopping");
    assertThat(Service.asking().get("/q/health/live").statusCode()).isEqualTo(200);
    Failing.LET_GO.countDown();
    assertThat(underWay.get(2, TimeUnit.MINUTES).statusCode()).isEqualTo(200);
  }
}
