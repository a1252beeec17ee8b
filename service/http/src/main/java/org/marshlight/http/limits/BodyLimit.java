package org.marshlight.http.limits;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import io.vertx.ext.web.impl.RoutingContextInternal;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.marshlight.http.door.FilterOrder;
import org.marshlight.http.door.Surface;

/**
 * Reads the whole body before a worker is asked, counting bytes as they come, chunked or not: a
 * slow client holds no thread, and a body beyond the limit is refused without being kept.
 */
@ApplicationScoped
public class BodyLimit {

  private final Map<Integer, BodyHandler> bodies = new ConcurrentHashMap<>();

  void register(@Observes Filters filters) {
    filters.register(this::read, FilterOrder.BODY_LIMIT);
    filters.register(BodyLimit::keep, FilterOrder.BODY_READ);
  }

  private void read(RoutingContext context) {
    if (context.request().isEnded()) {
      context.next();
    } else {
      bodies
          .computeIfAbsent(Surface.mostBytes(context.normalizedPath()), BodyLimit::upTo)
          .handle(context);
    }
  }

  private static BodyHandler upTo(int bytes) {
    return BodyHandler.create(false).setBodyLimit(bytes).setMergeFormAttributes(false);
  }

  /** A body of no bytes is one too; a route that found none would wait for it in vain. */
  private static void keep(RoutingContext context) {
    if (context.body().buffer() == null) {
      ((RoutingContextInternal) context).setBody(Buffer.buffer());
    }
    context.next();
  }
}
