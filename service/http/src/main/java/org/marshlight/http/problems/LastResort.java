package org.marshlight.http.problems;

import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerResponse;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.jboss.logging.Logger;
import org.marshlight.Problem;
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
    Problem problem = problem(context);
    if (context.response().headWritten()) {
      context.request().connection().close();
      return;
    }
    if (problem.status() == ProblemKind.TOO_LARGE.status()) {
      context.response().putHeader(HttpHeaders.CONNECTION, HttpHeaders.CLOSE);
    }
    answer(context.response(), problem);
    if (!context.request().isEnded()) {
      UnreadBody.letGo(context, problem.status() == ProblemKind.TOO_LARGE.status());
    }
  }

  private static Problem problem(RoutingContext context) {
    if (context.failure() instanceof Refusal refusal) {
      return Problems.of(refusal);
    }
    int status = Math.max(context.statusCode(), BODY_UNREADABLE);
    if (status >= 500 && context.failure() != null) {
      LOG.error("A request failed", context.failure());
    }
    return Problems.ofStatus(status);
  }

  /** Ends a response with a problem document. */
  private static void answer(HttpServerResponse response, Problem problem) {
    response.setStatusCode(problem.status());
    response.putHeader(HttpHeaders.CONTENT_TYPE, Problems.MEDIA_TYPE);
    StandingHeaders.put(response.headers());
    response.end(Buffer.buffer(ContractJson.write(problem)));
  }
}
