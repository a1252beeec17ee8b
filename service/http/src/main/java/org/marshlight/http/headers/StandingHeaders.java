package org.marshlight.http.headers;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.marshlight.Answer;
import org.marshlight.http.page.Style;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/**
 * The headers that stand on every response whatsoever: which cautions apply, where they are told,
 * and what a browser may do with the body. They are set as the head of a response is written, so
 * nothing that answers can forget them.
 */
@ApplicationScoped
public class StandingHeaders {

  /** Ids of the cautions that go with a response, separated by commas. */
  public static final String CAUTIONS = "Cautions";

  /** Before every other handler of the router. */
  private static final int FIRST = Integer.MAX_VALUE;

  private static final String GENERAL = ids(CautionBook.standard().general());

  private static final String POLICY =
      "default-src 'none'; style-src "
          + Style.POLICY_SOURCE
          + "; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  void register(@Observes Filters filters) {
    filters.register(StandingHeaders::putWhenWritten, FIRST);
  }

  /** An estimate names its own cautions, which its plan chose, and comes in several forms. */
  @ServerResponseFilter
  public void nameCautions(ContainerResponseContext response) {
    if (response.getEntity() instanceof Answer<?> answer) {
      response.getHeaders().putSingle(CAUTIONS, ids(answer.cautions()));
      response.getHeaders().putSingle(HttpHeaders.VARY, HttpHeaders.ACCEPT);
    }
  }

  /** Puts the headers that a response does not have yet. */
  public static void put(MultiMap headers) {
    putIfAbsent(headers, CAUTIONS, GENERAL);
    putIfAbsent(headers, HttpHeaders.LINK, "</v1/cautions>; rel=\"help\"");
    putIfAbsent(headers, HttpHeaders.CACHE_CONTROL, "no-store");
    putIfAbsent(headers, "Content-Security-Policy", POLICY);
    putIfAbsent(headers, "X-Content-Type-Options", "nosniff");
    putIfAbsent(headers, "Referrer-Policy", "no-referrer");
  }

  private static void putWhenWritten(RoutingContext context) {
    context.addHeadersEndHandler(written -> put(context.response().headers()));
    context.next();
  }

  private static void putIfAbsent(MultiMap headers, String name, String value) {
    if (!headers.contains(name)) {
      headers.set(name, value);
    }
  }

  private static String ids(List<Caution> cautions) {
    return cautions.stream().map(Caution::id).collect(Collectors.joining(", "));
  }
}
