package org.marshlight.http.problems;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.jboss.logging.Logger;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.json.ContractJson;

/**
 * Answers what never reaches a resource: paths that nothing serves, targets that are no paths,
 * bodies that are too large, and failures of the router itself.
 */
@ApplicationScoped
public class LastResort {

  private static final Logger LOG = Logger.getLogger(LastResort.class);
  private static final int FIRST = Integer.MIN_VALUE;
  private static final int LEAST_ERROR = 400;

  /** A body that breaks off or is ill chunked fails with no status of its own. */
  private static final int BODY_UNREADABLE = 400;

  private static final int GREATEST_ERROR = 599;

  void register(@Observes Router router) {
    router.route().order(FIRST).failureHandler(LastResort::answer);
    for (int status = LEAST_ERROR; status <= GREATEST_ERROR; status++) {
      router.errorHandler(status, LastResort::answer);
    }
  }

  private static void answer(RoutingContext context) {
    if (context.response().closed()) {
      return;
    }
    int status = Math.max(context.statusCode(), BODY_UNREADABLE);
    if (status >= 500 && context.failure() != null) {
      LOG.error("A request failed", context.failure());
    }
    if (context.response().headWritten()) {
      context.request().connection().close();
    } else {
      answer(context.response(), status);
      context.request().resume();
    }
  }

  /** Ends a response with the problem document of a status. */
  static void answer(HttpServerResponse response, int status) {
    response.setStatusCode(status);
    response.putHeader("Content-Type", Problems.MEDIA_TYPE);
    StandingHeaders.put(response.headers());
    response.end(Buffer.buffer(ContractJson.write(Problems.ofStatus(status))));
  }
}
