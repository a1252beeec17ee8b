package org.marshlight.http;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.WebApplicationException;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.Answer;
import org.marshlight.Meta;
import org.marshlight.safety.CautionBook;

/** Routes of the tests alone, which fail in ways that no route of the product should. */
@Path("/test-only")
public class Failing {

  @GET
  @Path("/in-the-route")
  @Operation(hidden = true)
  public String inTheRoute() {
    throw new IllegalStateException("secret of the house");
  }

  @GET
  @Path("/in-the-framework")
  @Operation(hidden = true)
  public String inTheFramework() {
    throw new WebApplicationException("secret of the house", 502);
  }

  @GET
  @Path("/while-writing")
  @Produces("text/csv")
  @Operation(hidden = true)
  public Answer<Unreadable> whileWriting() {
    return new Answer<>(
        new Unreadable(1),
        CautionBook.standard().general(),
        List.of(),
        List.of(),
        Meta.WITHOUT_PLAN);
  }

  /** A record that cannot be read back. */
  public record Unreadable(double figure) {

    @Override
    public double figure() {
      throw new IllegalStateException("secret of the house");
    }
  }
}
