package org.marshlight.http.door;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Locale;
import java.util.Optional;
import org.marshlight.http.problems.Refusal;

/**
 * Turns away what a path does not answer: other methods, bodies of another type, parameters that it
 * does not have, forms of answer that it cannot give. What passes has its one best form as Accept
 * header and its plain type as Content-Type, so that the routes need not choose, nor read
 * parameters that may be ill formed.
 */
@ApplicationScoped
public class Doorkeeper {

  void register(@Observes Filters filters) {
    filters.register(Doorkeeper::check, FilterOrder.DOORKEEPER);
  }

  private static void check(RoutingContext context) {
    Optional<Surface> surface = Surface.at(context.normalizedPath());
    if (surface.isPresent()) {
      check(context, surface.get());
    } else {
      context.next();
    }
  }

  private static void check(RoutingContext context, Surface surface) {
    HttpServerRequest request = context.request();
    boolean options = request.method().equals(HttpMethod.OPTIONS);
    if (options || !surface.methods().contains(request.method().name())) {
      context.response().putHeader(HttpHeaders.ALLOW, String.join(", ", surface.methods()));
      if (options) {
        context.response().setStatusCode(204).end();
      } else {
        context.fail(405);
      }
    } else if (request.method().equals(HttpMethod.POST) && !takes(surface, request)) {
      context.fail(415);
    } else if (unknownParameter(surface, request).isPresent()) {
      String unknown = unknownParameter(surface, request).get();
      context.fail(400, Refusal.unknownQuery(unknown, surface.queries()));
    } else {
      String accept = String.join(",", request.headers().getAll(HttpHeaders.ACCEPT));
      Optional<String> best = Accepted.best(accept, surface.gives());
      if (best.isPresent()) {
        request.headers().set(HttpHeaders.ACCEPT, best.get());
        if (request.method().equals(HttpMethod.POST)) {
          request.headers().set(HttpHeaders.CONTENT_TYPE, surface.takes());
        }
        context.next();
      } else {
        context.fail(406);
      }
    }
  }

  /** The first parameter of the query that the path does not have: left alone it would mislead. */
  private static Optional<String> unknownParameter(Surface surface, HttpServerRequest request) {
    return request.params().names().stream()
        .filter(name -> !surface.queries().contains(name))
        .sorted()
        .findFirst();
  }

  private static boolean takes(Surface surface, HttpServerRequest request) {
    String type = request.getHeader(HttpHeaders.CONTENT_TYPE);
    return type != null
        && type.split(";", 2)[0].trim().toLowerCase(Locale.ROOT).equals(surface.takes());
  }
}
