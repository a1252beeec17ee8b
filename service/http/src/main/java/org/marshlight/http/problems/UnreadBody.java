package org.marshlight.http.problems;

import io.vertx.core.http.HttpConnection;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;

/**
 * The rest of a body whose request has been refused already. A connection that is closed while its
 * client still sends takes the refusal with it, so a little more is read and thrown away before the
 * connection ends (RFC 9112, section 9.6).
 */
final class UnreadBody {

  /** As much as any path reads: whoever sends a little too much gets to read why. */
  private static final long MOST_BYTES = 4L * 1024 * 1024;

  private static final long LONGEST_MS = 5000;

  private final HttpConnection connection;
  private long bytes;

  private UnreadBody(HttpConnection connection) {
    this.connection = connection;
  }

  /**
   * Reads what is left of the body of a refused request and throws it away; ends the connection
   * where that is too much or takes too long.
   *
   * @param context the request, answered already
   * @param last whether the connection ends in any case
   */
  static void letGo(RoutingContext context, boolean last) {
    HttpServerRequest request = context.request();
    UnreadBody body = new UnreadBody(request.connection());
    long timer = context.vertx().setTimer(LONGEST_MS, late -> body.connection.close());
    request.exceptionHandler(broken -> body.connection.close());
    request.endHandler(
        ended -> {
          context.vertx().cancelTimer(timer);
          if (last) {
            body.connection.close();
          }
        });
    request.handler(chunk -> body.count(chunk.length()));
    request.resume();
  }

  private void count(int more) {
    bytes += more;
    if (bytes > MOST_BYTES) {
      connection.close();
    }
  }
}
