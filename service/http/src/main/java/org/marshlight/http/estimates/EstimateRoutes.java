package org.marshlight.http.estimates;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestQuery;
import org.marshlight.Answer;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.tables.AnswerCsv;
import org.marshlight.loop.Stage;

/** What a plan gives: one route for each stage, and one for all of them chained. */
@Path("/v1/estimates")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({MediaType.APPLICATION_JSON, AnswerCsv.MEDIA_TYPE, MediaType.TEXT_HTML})
@Tag(name = "estimates")
public class EstimateRoutes {

  private final Estimates estimates;

  public EstimateRoutes(Estimates estimates) {
    this.estimates = estimates;
  }

  @POST
  @Path("/digester")
  @Operation(
      operationId = "estimateDigester",
      summary = "How warm the tank gets and what gas it gives")
  public Answer<PlanEstimate> digester(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.DIGESTER, plan, working);
  }

  @POST
  @Path("/wetland")
  @Operation(operationId = "estimateWetland", summary = "What the beds make of the outflow")
  public Answer<PlanEstimate> wetland(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.WETLAND, plan, working);
  }

  @POST
  @Path("/crop")
  @Operation(operationId = "estimateCrop", summary = "What the planted beds grow")
  public Answer<PlanEstimate> crop(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.CROP, plan, working);
  }

  @POST
  @Path("/ethanol")
  @Operation(operationId = "estimateEthanol", summary = "How much fuel alcohol, and at what heat")
  public Answer<PlanEstimate> ethanol(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.ETHANOL, plan, working);
  }

  @POST
  @Path("/compost")
  @Operation(operationId = "estimateCompost", summary = "What the heap returns to the land")
  public Answer<PlanEstimate> compost(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.COMPOST, plan, working);
  }

  @POST
  @Path("/loop")
  @Operation(
      operationId = "estimateLoop",
      summary = "The whole plan: every stage, balances, flows and verdicts")
  public Answer<PlanEstimate> loop(byte[] plan, @RestQuery String working) {
    return estimates.of(Stage.LOOP, plan, working);
  }
}
