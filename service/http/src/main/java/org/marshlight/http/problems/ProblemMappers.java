package org.marshlight.http.problems;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.marshlight.Problem;
import org.marshlight.contract.Faults;
import org.marshlight.json.ContractJson;
import org.marshlight.json.MalformedJson;
import org.marshlight.study.StudyStopped;

/**
 * Turns what a resource refuses into a problem document. What fails without meaning to, in a
 * resource or while its answer is written, is left to the {@link LastResort}.
 */
public class ProblemMappers {

  private static final int SECONDS_TO_WAIT = 1;

  @ServerExceptionMapper
  public RestResponse<byte[]> malformed(MalformedJson malformed) {
    return response(Problems.malformed(malformed.fault())).build();
  }

  @ServerExceptionMapper
  public RestResponse<byte[]> wrong(Faults faults) {
    return response(Problems.wrongFields(faults.list())).build();
  }

  @ServerExceptionMapper
  public RestResponse<byte[]> refused(Refusal refusal) {
    RestResponse.ResponseBuilder<byte[]> response = response(Problems.of(refusal));
    if (refusal.kind() == ProblemKind.OVERLOADED) {
      response.header(HttpHeaders.RETRY_AFTER, SECONDS_TO_WAIT);
    }
    return response.build();
  }

  /** Nobody is there to read this. */
  @ServerExceptionMapper
  public RestResponse<byte[]> stopped(StudyStopped stopped) {
    return response(Problems.ofStatus(ProblemKind.OVERLOADED.status())).build();
  }

  /** What the framework refused: no such path, method or media type. */
  @ServerExceptionMapper
  public RestResponse<byte[]> framework(WebApplicationException exception) {
    Response refused = exception.getResponse();
    RestResponse.ResponseBuilder<byte[]> response =
        response(Problems.ofStatus(refused.getStatus()));
    String allow = refused.getHeaderString(HttpHeaders.ALLOW);
    if (allow != null) {
      response.header(HttpHeaders.ALLOW, allow);
    }
    return response.build();
  }

  private static RestResponse.ResponseBuilder<byte[]> response(Problem problem) {
    return RestResponse.ResponseBuilder.create(
            RestResponse.Status.fromStatusCode(problem.status()), ContractJson.write(problem))
        .type(Problems.MEDIA_TYPE);
  }
}
