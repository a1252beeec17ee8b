package org.marshlight.http.problems;

import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.marshlight.Problem;
import org.marshlight.contract.Faults;
import org.marshlight.json.ContractJson;
import org.marshlight.json.MalformedJson;

/** Turns whatever goes wrong in a resource into a problem document. */
public class ProblemMappers {

  private static final Logger LOG = Logger.getLogger(ProblemMappers.class);
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

  /** What the framework refused: no such path, method or media type. */
  @ServerExceptionMapper
  public RestResponse<byte[]> framework(WebApplicationException exception) {
    Response refused = exception.getResponse();
    if (refused.getStatus() >= 500) {
      return failed(exception);
    }
    RestResponse.ResponseBuilder<byte[]> response =
        response(Problems.ofStatus(refused.getStatus()));
    String allow = refused.getHeaderString(HttpHeaders.ALLOW);
    if (allow != null) {
      response.header(HttpHeaders.ALLOW, allow);
    }
    return response.build();
  }

  @ServerExceptionMapper
  public RestResponse<byte[]> failed(Throwable failure) {
    LOG.error("A request failed", failure);
    return response(Problems.ofStatus(ProblemKind.INTERNAL_ERROR.status())).build();
  }

  private static RestResponse.ResponseBuilder<byte[]> response(Problem problem) {
    return RestResponse.ResponseBuilder.create(
            RestResponse.Status.fromStatusCode(problem.status()), ContractJson.write(problem))
        .type(Problems.MEDIA_TYPE);
  }
}
