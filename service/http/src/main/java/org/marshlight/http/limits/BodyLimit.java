package org.marshlight.http.limits;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.handler.BodyHandler;
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

  void register(@Observes Filters filters) {
    BodyHandler body = BodyHandler.create(false).setBodyLimit(BYTES).setMergeFormAttributes(false);
    filters.register(body, FilterOrder.BODY_LIMIT);
  }
}
