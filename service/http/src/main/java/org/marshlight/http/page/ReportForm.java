package org.marshlight.http.page;

import com.fasterxml.jackson.databind.JsonNode;
import io.netty.handler.codec.http.QueryStringDecoder;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.marshlight.Answer;
import org.marshlight.Problem;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.estimates.Estimates;
import org.marshlight.http.estimates.Reader;
import org.marshlight.http.form.FormState;
import org.marshlight.http.form.SubmittedPlan;
import org.marshlight.http.problems.Problems;
import org.marshlight.http.problems.Refusal;
import org.marshlight.json.MalformedJson;
import org.marshlight.loop.Stage;

/**
 * The report of a plan that the page's form sends, so that the page works without scripts. Where
 * the plan is refused, the form comes back as a page with the entries kept.
 */
@Path("/report")
public class ReportForm {

  private static final String PLAN = "plan";
  private static final int MOST_FIELDS = 5000;

  private final Estimates estimates;
  private final Reader reader;
  private final DemoPlan demo;

  public ReportForm(Estimates estimates, Reader reader, DemoPlan demo) {
    this.estimates = estimates;
    this.reader = reader;
    this.demo = demo;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Produces(MediaType.TEXT_HTML)
  @Operation(hidden = true)
  public Answer<PlanEstimate> report(byte[] form) {
    Map<String, List<String>> fields = fields(form);
    try {
      if (fields.containsKey(Reader.UNITS)) {
        reader.prefer(fields.get(Reader.UNITS).get(0));
      }
      return estimates.of(Stage.LOOP, plan(fields), null);
    } catch (Faults | MalformedJson | Refusal refused) {
      throw refusedForm(fields, refused);
    }
  }

  @ServerExceptionMapper
  public Response shown(RefusedForm refused) {
    return refused.page(reader.texts());
  }

  /** The plan: whole as JSON, or field by field. */
  private byte[] plan(Map<String, List<String>> fields) {
    return fields.containsKey(PLAN)
        ? fields.get(PLAN).get(0).getBytes(StandardCharsets.UTF_8)
        : SubmittedPlan.of(fields, demo.json()).toString().getBytes(StandardCharsets.UTF_8);
  }

  private RefusedForm refusedForm(Map<String, List<String>> fields, RuntimeException refused) {
    Problem problem = problem(refused);
    if (fields.containsKey(PLAN)) {
      return RefusedForm.whole(problem, fields.get(PLAN).get(0));
    }
    JsonNode entries = SubmittedPlan.entries(fields, demo.json());
    return RefusedForm.fields(
        problem, new FormState(entries, SubmittedPlan.absent(fields), problem.errors()));
  }

  private static Problem problem(RuntimeException refused) {
    if (refused instanceof Faults faults) {
      return Problems.wrongFields(faults.list());
    }
    return refused instanceof MalformedJson malformed
        ? Problems.malformed(malformed.fault())
        : Problems.of((Refusal) refused);
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
