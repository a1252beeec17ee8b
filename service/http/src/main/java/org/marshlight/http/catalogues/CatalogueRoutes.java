package org.marshlight.http.catalogues;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestHeader;
import org.jboss.resteasy.reactive.RestPath;
import org.marshlight.CatalogueAnswer;
import org.marshlight.Meta;
import org.marshlight.http.problems.Refusal;
import org.marshlight.json.CanonicalHash;
import org.marshlight.json.ContractJson;
import org.marshlight.safety.CautionBook;

/** What the engine knows, with sources. Answers change only with the version. */
@Path("/v1")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "catalogues")
public class CatalogueRoutes {

  /** Names of the catalogues, as alternatives of a pattern. */
  public static final String NAMES =
      "climates|feeds|plants|soils|ingredients|fuels|media|coefficients|sources|formulas|cautions";

  /** Path of a catalogue, as the router reads it. */
  public static final String PATH = "/{catalogue:" + NAMES + "}";

  private static final String AN_HOUR = "public, max-age=3600";

  @GET
  @Path(PATH)
  @Operation(operationId = "list", summary = "All items")
  public Response list(
      @RestPath String catalogue, @RestHeader(HttpHeaders.IF_NONE_MATCH) String ifNoneMatch) {
    return answer(Catalogue.named(catalogue).list(), ifNoneMatch);
  }

  @GET
  @Path(PATH + "/{id}")
  @Operation(operationId = "get", summary = "One item")
  public Response get(
      @RestPath String catalogue,
      @RestPath String id,
      @RestHeader(HttpHeaders.IF_NONE_MATCH) String ifNoneMatch) {
    Catalogue items = Catalogue.named(catalogue);
    Record item =
        items.find(id).orElseThrow(() -> Refusal.unknownId(catalogue, id, items.items().keySet()));
    return answer(List.of(item), ifNoneMatch);
  }

  /** The tag is weak, for a compressed answer is the same to its reader but not to the byte. */
  private static Response answer(List<Record> items, String ifNoneMatch) {
    byte[] body =
        ContractJson.write(
            new CatalogueAnswer<>(items, CautionBook.standard().general(), Meta.WITHOUT_PLAN));
    EntityTag tag = new EntityTag(CanonicalHash.sha256(body), true);
    Response.ResponseBuilder response =
        isKnown(tag, ifNoneMatch)
            ? Response.notModified()
            : Response.ok(body, MediaType.APPLICATION_JSON);
    return response.tag(tag).header(HttpHeaders.CACHE_CONTROL, AN_HOUR).build();
  }

  /** Whether a client has the answer already; tags are compared weakly (RFC 9110, 13.1.2). */
  private static boolean isKnown(EntityTag tag, String ifNoneMatch) {
    return ifNoneMatch != null
        && Arrays.stream(ifNoneMatch.split(","))
            .map(String::trim)
            .map(known -> known.startsWith("W/") ? known.substring(2) : known)
            .anyMatch(known -> known.equals("*") || known.equals("\"" + tag.getValue() + "\""));
  }
}
