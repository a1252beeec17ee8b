package org.marshlight.http.page;

import io.netty.handler.codec.http.QueryStringDecoder;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.Answer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.estimates.Estimates;
import org.marshlight.http.problems.Refusal;
import org.marshlight.loop.Stage;

/** The report of a plan that the page's form sends, so that the page works without scripts. */
@Path("/report")
public class ReportForm {

  private static final String FIELD = "plan";

  private final Estimates estimates;

  public ReportForm(Estimates estimates) {
    this.estimates = estimates;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Produces(MediaType.TEXT_HTML)
  @Operation(hidden = true)
  public Answer<PlanEstimate> report(byte[] form) {
    return estimates.of(Stage.LOOP, plan(form).getBytes(StandardCharsets.UTF_8), null);
  }

  private static String plan(byte[] form) {
    String encoded = new String(form, StandardCharsets.ISO_8859_1);
    try {
      return new QueryStringDecoder(encoded, StandardCharsets.UTF_8, false, 2)
          .parameters()
          .getOrDefault(FIELD, List.of(""))
          .get(0);
    } catch (IllegalArgumentException e) {
      throw Refusal.query(FIELD, null, "a plan, encoded as a form does");
    }
  }
}
