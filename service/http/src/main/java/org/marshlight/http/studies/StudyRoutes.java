package org.marshlight.http.studies;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestQuery;
import org.marshlight.http.tables.AnswerCsv;
import org.marshlight.study.BreakEvenRequest;
import org.marshlight.study.BuildOrderRequest;
import org.marshlight.study.CalibrationRequest;
import org.marshlight.study.ComparisonRequest;
import org.marshlight.study.SensitivityRequest;
import org.marshlight.study.SizingRequest;
import org.marshlight.study.SweepRequest;
import org.marshlight.study.UncertaintyRequest;

/** What studies tell about a plan: one route for each. */
@Path("/v1/studies")
@Consumes(MediaType.APPLICATION_JSON)
@Produces({MediaType.APPLICATION_JSON, StudyLines.MEDIA_TYPE})
@Tag(name = "studies")
public class StudyRoutes {

  private final StudyDesk desk;

  public StudyRoutes(StudyDesk desk) {
    this.desk = desk;
  }

  @POST
  @Path("/uncertainty")
  @Operation(operationId = "studyUncertainty", summary = "How sure the figures of a plan are")
  public Response uncertainty(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, UncertaintyRequest.class, costOnly, context);
  }

  @POST
  @Path("/sensitivity")
  @Operation(operationId = "studySensitivity", summary = "Which uncertain numbers matter")
  public Response sensitivity(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, SensitivityRequest.class, costOnly, context);
  }

  @POST
  @Path("/sizing")
  @Operation(operationId = "studySizing", summary = "The smallest sizes that meet targets")
  public Response sizing(byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, SizingRequest.class, costOnly, context);
  }

  @POST
  @Path("/comparison")
  @Operation(operationId = "studyComparison", summary = "A plan and its variants side by side")
  public Response comparison(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, ComparisonRequest.class, costOnly, context);
  }

  @POST
  @Path("/sweep")
  @Produces({MediaType.APPLICATION_JSON, StudyLines.MEDIA_TYPE, AnswerCsv.MEDIA_TYPE})
  @Operation(
      operationId = "studySweep",
      summary = "How figures change with one or two numbers of a plan")
  public Response sweep(byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, SweepRequest.class, costOnly, context);
  }

  @POST
  @Path("/calibration")
  @Operation(
      operationId = "studyCalibration",
      summary = "Readings of a tank against its plan, and coefficients that fit them")
  public Response calibration(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, CalibrationRequest.class, costOnly, context);
  }

  @POST
  @Path("/break-even")
  @Operation(
      operationId = "studyBreakEven",
      summary = "The smallest single change that turns a verdict to yes")
  public Response breakEven(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, BreakEvenRequest.class, costOnly, context);
  }

  @POST
  @Path("/build-order")
  @Operation(
      operationId = "studyBuildOrder",
      summary = "In which order to build within a budget, and what to read first")
  public Response buildOrder(
      byte[] body, @RestQuery String costOnly, @Context RoutingContext context) {
    return desk.answer(body, BuildOrderRequest.class, costOnly, context);
  }
}
