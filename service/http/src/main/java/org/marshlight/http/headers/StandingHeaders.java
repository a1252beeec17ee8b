package org.marshlight.http.headers;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.marshlight.Answer;
import org.marshlight.http.door.FilterOrder;
import org.marshlight.http.page.Style;
import org.marshlight.safety.Caution;
import org.marshlight.safety.CautionBook;

/**
 * The headers that stand on every response whatsoever: which cautions apply, where they are told,
 * whether the response may be kept, and what a browser may do with it. They are set as the head of
 * a response is written, so nothing that answers can forget them.
 */
@ApplicationScoped
public class StandingHeaders {

  private static final String UNCOMPRESSED = "identity";

  private static final String VARIES_WITH_READER =
      HttpHeaders.ACCEPT + ", " + HttpHeaders.ACCEPT_LANGUAGE;

  /** Ids of the cautions that go with a response, separated by commas. */
  public static final String CAUTIONS = "Cautions";

  /** What a browser may do with a response. */
  public static final String POLICY = "Content-Security-Policy";

  /** The same for the one page that has scripts: its own and no others. */
  public static final String WITH_SCRIPTS =
      policy("style-src 'self' " + Style.POLICY_SOURCE + "; script-src 'self'; connect-src 'self'");

  /** The headers of a response that says nothing else of its cautions. */
  public static final Map<String, String> GENERAL = general();

  void register(@Observes Filters filters) {
    filters.register(StandingHeaders::putWhenWritten, FilterOrder.STANDING_HEADERS);
  }

  /** An estimate names its own cautions, which its plan chose, and comes in several forms. */
  @ServerResponseFilter
  public void nameCautions(ContainerResponseContext response) {
    if (response.getEntity() instanceof Answer<?> answer) {
      response.getHeaders().putSingle(CAUTIONS, ids(answer.cautions()));
      boolean read = MediaType.TEXT_HTML_TYPE.isCompatible(response.getMediaType());
      response
          .getHeaders()
          .putSingle(HttpHeaders.VARY, read ? VARIES_WITH_READER : HttpHeaders.ACCEPT);
    }
  }

  /** Puts the headers that a response does not have yet. */
  public static void put(MultiMap headers) {
    GENERAL.forEach(
        (name, value) -> {
          if (!headers.contains(name)) {
            headers.set(name, value);
          }
        });
    varyByEncoding(headers);
  }

  private static void putWhenWritten(RoutingContext context) {
    context.addHeadersEndHandler(written -> put(context.response().headers()));
    context.next();
  }

  /**
   * Every response may come compressed, for all are text: none is kept from it by the mark that the
   * framework puts on what it takes for something else. Whoever keeps one must distinguish them by
   * that too.
   */
  private static void varyByEncoding(MultiMap headers) {
    if (headers.contains(HttpHeaders.CONTENT_ENCODING, UNCOMPRESSED, true)) {
      headers.remove(HttpHeaders.CONTENT_ENCODING);
    }
    Set<String> varies = new LinkedHashSet<>();
    for (String value : headers.getAll(HttpHeaders.VARY)) {
      varies.addAll(List.of(value.split(",\\s*")));
    }
    varies.add(HttpHeaders.ACCEPT_ENCODING);
    headers.set(HttpHeaders.VARY, String.join(", ", varies));
  }

  private static String policy(String sources) {
    return "default-src 'none'; "
        + sources
        + "; img-src data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
  }

  /** What the header says of some cautions. */
  public static String ids(List<Caution> cautions) {
    return cautions.stream().map(Caution::id).collect(Collectors.joining(", "));
  }

  private static Map<String, String> general() {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put(CAUTIONS, ids(CautionBook.standard().general()));
    headers.put(HttpHeaders.LINK, "</v1/cautions>; rel=\"help\"");
    headers.put(HttpHeaders.CACHE_CONTROL, "no-store");
    headers.put(POLICY, policy("style-src " + Style.POLICY_SOURCE));
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("Referrer-Policy", "no-referrer");
    return Collections.unmodifiableMap(headers);
  }
}
