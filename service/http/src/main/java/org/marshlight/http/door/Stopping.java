package org.marshlight.http.door;

import io.quarkus.runtime.ShutdownDelayInitiatedEvent;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.marshlight.http.problems.Refusal;

/**
 * Takes no new request once the service was asked to stop, while those under way are finished.
 * Whoever watches the service still sees its health and its metrics.
 */
@ApplicationScoped
public class Stopping {

  private static final String WATCHED = "/q/";
  private static final int UNAVAILABLE = 503;

  /** Until another one serves in this one's place. */
  private static final String SECONDS_TO_WAIT = "5";

  private volatile boolean stopping;

  void register(@Observes Filters filters) {
    filters.register(this::check, FilterOrder.STOPPING);
  }

  void stop(@Observes ShutdownDelayInitiatedEvent told) {
    stopping = true;
  }

  private void check(RoutingContext context) {
    if (stopping && !context.normalizedPath().startsWith(WATCHED)) {
      context
          .response()
          .putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE)
          .putHeader("Retry-After", SECONDS_TO_WAIT);
      context.fail(UNAVAILABLE, Refusal.stopping());
    } else {
      context.next();
    }
  }
}
