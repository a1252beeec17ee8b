package org.marshlight.http.contract;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.headers.Header;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;
import org.marshlight.Problem;
import org.marshlight.http.headers.StandingHeaders;
import org.marshlight.http.problems.ProblemKind;
import org.marshlight.http.problems.Problems;

/** What operations answer: their own answer, and a problem document for each status of refusal. */
final class Responses {

  private static final int LONGEST_HEADER = 4000;
  private static final int LONGEST_PAGE = 20_000_000;

  private final Schema problem;
  private final Map<String, APIResponse> components = new TreeMap<>();

  Responses(RecordSchemas schemas) {
    problem = schemas.answered(Problem.class);
  }

  /** The responses that operations share. */
  Map<String, APIResponse> components() {
    return components;
  }

  /** The headers that responses share. */
  Map<String, Header> headers() {
    Map<String, Header> headers = new TreeMap<>();
    headers.put(StandingHeaders.CAUTIONS, header("Ids of the cautions that apply, by commas."));
    headers.put("Link", header("Where the cautions are told: </v1/cautions>; rel=\"help\"."));
    headers.put("ETag", header("Strong entity tag of the answer."));
    headers.put("Retry-After", header("Seconds to wait before trying again."));
    return headers;
  }

  /** An estimate in its three forms. */
  APIResponses estimate(Schema answer) {
    Content content =
        json(answer)
            .addMediaType(
                "text/csv", OASFactory.createMediaType().schema(Requests.text(LONGEST_PAGE)))
            .addMediaType(
                "text/html", OASFactory.createMediaType().schema(Requests.text(LONGEST_PAGE)));
    return with(ok(content), 400, 406, 413, 415, 500, 503);
  }

  /** A study: the answer or its cost alone, lines of progress, and for a sweep a table. */
  APIResponses study(Schema answer, Schema opening, boolean table) {
    Content content = json(OASFactory.createSchema().addAnyOf(answer).addAnyOf(opening));
    content.addMediaType(
        "application/x-ndjson", OASFactory.createMediaType().schema(Requests.text(LONGEST_PAGE)));
    if (table) {
      content.addMediaType(
          "text/csv", OASFactory.createMediaType().schema(Requests.text(LONGEST_PAGE)));
    }
    return with(ok(content), 400, 406, 413, 415, 500, 503);
  }

  /** An answer that comes as JSON only. */
  APIResponses json(Schema answer, int... refusals) {
    return with(ok(json(answer)), refusals);
  }

  /** Items of a catalogue. */
  APIResponses catalogue(Schema answer, boolean one) {
    APIResponses responses =
        OASFactory.createAPIResponses()
            .addAPIResponse("200", ok(json(answer)).addHeader("ETag", shared("ETag")))
            .addAPIResponse(
                "304",
                standing(OASFactory.createAPIResponse().description("The client has the answer.")));
    return one ? refusing(responses, 404, 406, 500) : refusing(responses, 406, 500);
  }

  private APIResponses with(APIResponse ok, int... refusals) {
    return refusing(OASFactory.createAPIResponses().addAPIResponse("200", ok), refusals);
  }

  private APIResponses refusing(APIResponses responses, int... refusals) {
    for (int status : refusals) {
      String name = "Problem" + status;
      components.computeIfAbsent(name, n -> refusal(status));
      responses.addAPIResponse(
          String.valueOf(status),
          OASFactory.createAPIResponse().ref("#/components/responses/" + name));
    }
    return responses;
  }

  private APIResponse refusal(int status) {
    String kinds =
        Arrays.stream(ProblemKind.values())
            .filter(kind -> kind.status() == status)
            .filter(kind -> kind != ProblemKind.REFUSED && kind != ProblemKind.FAILED)
            .map(kind -> kind.title() + " (" + kind.code() + ")")
            .collect(Collectors.joining("; ", "", "."));
    APIResponse response =
        standing(
            OASFactory.createAPIResponse()
                .description(kinds)
                .content(
                    OASFactory.createContent()
                        .addMediaType(
                            Problems.MEDIA_TYPE, OASFactory.createMediaType().schema(problem))));
    return status == ProblemKind.OVERLOADED.status()
        ? response.addHeader("Retry-After", shared("Retry-After"))
        : response;
  }

  private static APIResponse ok(Content content) {
    return standing(
        OASFactory.createAPIResponse()
            .description("The answer, with its cautions.")
            .content(content));
  }

  private static APIResponse standing(APIResponse response) {
    return response
        .addHeader(StandingHeaders.CAUTIONS, shared(StandingHeaders.CAUTIONS))
        .addHeader("Link", shared("Link"));
  }

  private static Content json(Schema schema) {
    return OASFactory.createContent()
        .addMediaType("application/json", OASFactory.createMediaType().schema(schema));
  }

  private static Header shared(String name) {
    return OASFactory.createHeader().ref("#/components/headers/" + name);
  }

  private static Header header(String description) {
    return OASFactory.createHeader().description(description).schema(Requests.text(LONGEST_HEADER));
  }
}
