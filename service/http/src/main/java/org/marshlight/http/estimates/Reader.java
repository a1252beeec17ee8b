package org.marshlight.http.estimates;

import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.marshlight.http.problems.Refusal;
import org.marshlight.http.words.Language;
import org.marshlight.http.words.Texts;
import org.marshlight.http.words.UnitSystem;
import org.marshlight.loop.Plan;

/**
 * Who reads the answer of the request at hand: in which units and language, and of which plan, for
 * those forms of an answer that show it.
 */
@RequestScoped
public class Reader {

  /** Name of the parameter that asks for a system of units. */
  public static final String UNITS = "units";

  private final HttpHeaders headers;
  private final UriInfo uri;
  private UnitSystem units;
  private Plan plan;

  public Reader(HttpHeaders headers, UriInfo uri) {
    this.headers = headers;
    this.uri = uri;
  }

  /** The plan; null until one was read. */
  public Plan plan() {
    return plan;
  }

  /** The system of units that the query asks for, unless {@link #prefer} named another. */
  public UnitSystem units() {
    if (units == null) {
      prefer(uri.getQueryParameters().getFirst(UNITS));
    }
    return units;
  }

  /**
   * Takes a system of units from elsewhere than the query.
   *
   * @param name wire name; null for SI
   * @throws Refusal if there is no such system, or the answer comes as JSON, which is always SI
   */
  public void prefer(String name) {
    UnitSystem asked =
        UnitSystem.named(name)
            .orElseThrow(() -> Refusal.query(UNITS, name, String.join(" or ", UnitSystem.names())));
    boolean json = MediaType.APPLICATION_JSON.equals(headers.getHeaderString(HttpHeaders.ACCEPT));
    if (json && asked != UnitSystem.SI) {
      throw Refusal.query(
          UNITS, name, "si where the answer is JSON; ask for text/html or text/csv to get others");
    }
    units = asked;
  }

  /** Texts in the language that the reader likes best. */
  public Texts texts() {
    return Texts.in(Language.best(headers.getHeaderString(HttpHeaders.ACCEPT_LANGUAGE)));
  }

  void take(Plan read) {
    plan = read;
  }
}
