package org.marshlight.http.page;

import io.netty.handler.codec.http.QueryStringDecoder;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.marshlight.Answer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.estimates.Estimates;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.form.SubmittedPlan;
import org.marshlight.http.problems.Refusal;
import org.marshlight.loop.Stage;

/** The report of a plan that the page's form sends, so that the page works without scripts. */
@Path("/report")
public class ReportForm {

  private static final String PLAN = "plan";
  private static final int MOST_FIELDS = 5000;

  private final Estimates estimates;
  private final Reader reader;

  public ReportForm(Estimates estimates, Reader reader) {
    this.estimates = estimates;
    this.reader = reader;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Produces(MediaType.TEXT_HTML)
  @Operation(hidden = true)
  public Answer<PlanEstimate> report(byte[] form) {
    Map<String, List<String>> fields = fields(form);
    if (fields.containsKey(Reader.UNITS)) {
      reader.prefer(fields.get(Reader.UNITS).get(0));
    }
    return estimates.of(Stage.LOOP, plan(fields), null);
  }

  /** The plan: whole as JSON, or field by field. */
  private static byte[] plan(Map<String, List<String>> fields) {
    return fields.containsKey(PLAN)
        ? fields.get(PLAN).get(0).getBytes(StandardCharsets.UTF_8)
        : SubmittedPlan.of(fields).toString().getBytes(StandardCharsets.UTF_8);
  }

  private static Map<String, List<String>> fields(byte[] form) {
    String encoded = new String(form, StandardCharsets.ISO_8859_1);
    try {
      return new QueryStringDecoder(encoded, StandardCharsets.UTF_8, false, MOST_FIELDS)
          .parameters();
    } catch (IllegalArgumentException e) {
      throw Refusal.query(PLAN, null, "a plan, encoded as a form does");
    }
  }
}
