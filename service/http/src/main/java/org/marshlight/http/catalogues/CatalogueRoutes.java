package org.marshlight.http.catalogues;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
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

  /** Path of a catalogue, as the router reads it. */
  public static final String PATH =
      "/{catalogue:climates|feeds|plants|soils|ingredients|fuels|media|coefficients|sources"
          + "|formulas|cautions}";

  private static final String AN_HOUR = "public, max-age=3600";

  @GET
  @Path(PATH)
  @Operation(operationId = "list", summary = "All items")
  public Response list(@RestPath String catalogue, @Context Request request) {
    return answer(Catalogue.named(catalogue).list(), request);
  }

  @GET
  @Path(PATH + "/{id}")
  @Operation(operationId = "get", summary = "One item")
  public Response get(@RestPath String catalogue, @RestPath String id, @Context Request request) {
    Catalogue items = Catalogue.named(catalogue);
    Record item =
        items.find(id).orElseThrow(() -> Refusal.unknownId(catalogue, id, items.items().keySet()));
    return answer(List.of(item), request);
  }

  private static Response answer(List<Record> items, Request request) {
    byte[] body =
        ContractJson.write(
            new CatalogueAnswer<>(items, CautionBook.standard().general(), Meta.WITHOUT_PLAN));
    EntityTag tag = new EntityTag(CanonicalHash.sha256(body));
    Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
    Response.ResponseBuilder response = unchanged == null ? Response.ok(body) : unchanged;
    return response.tag(tag).header(HttpHeaders.CACHE_CONTROL, AN_HOUR).build();
  }
}
