package org.marshlight.http.limits;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import io.vertx.ext.web.impl.RoutingContextInternal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.marshlight.http.door.FilterOrder;

/**
 * Reads the whole body before a worker is asked, counting bytes as they come, chunked or not: a
 * slow client holds no thread, and a body beyond the limit is refused without being kept.
 */
@ApplicationScoped
public class BodyLimit {

  /** Largest body that is read, in bytes. */
  public static final int BYTES = 1024 * 1024;

  private final BodyHandler body =
      BodyHandler.create(false).setBodyLimit(BYTES).setMergeFormAttributes(false);

  void register(@Observes Filters filters) {
    filters.register(this::read, FilterOrder.BODY_LIMIT);
    filters.register(BodyLimit::keep, FilterOrder.BODY_READ);
  }

  private void read(RoutingContext context) {
    if (context.request().isEnded()) {
      context.next();
    } else {
      body.handle(context);
    }
  }

  /** A body of no bytes is one too; a route that found none would wait for it in vain. */
  private static void keep(RoutingContext context) {
    if (context.body().buffer() == null) {
      ((RoutingContextInternal) context).setBody(Buffer.buffer());
    }
    context.next();
  }
}
