package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.marshlight.Answer;
import org.marshlight.Marshlight;
import org.marshlight.contract.Faults;
import org.marshlight.decision.PlanEstimate;
import org.marshlight.http.contract.Sample;
import org.marshlight.json.ContractJson;
import org.marshlight.json.ExtremePlans;
import org.marshlight.json.PlanDocument;
import org.marshlight.json.RandomPlans;
import org.marshlight.loop.Stage;

/**
 * Requests and answers are what the OpenAPI document says, as an independent validator of JSON
 * Schema 2020-12 reads it. Random plans go to the engine without HTTP, which is faster.
 */
@QuarkusTest
class PublishedSchemasTest {

  private static final long SEED = 20261201;

  /** A thousand take minutes on a busy machine: mvn verify -Drandom.plans=1000. */
  private static final int RANDOM_PLANS = Integer.getInteger("random.plans", 200);

  private static final int EXTREME_PLANS = RANDOM_PLANS / 2;
  private static final String JSON = "application/json";

  private JsonNode document;
  private PublishedSchemas schemas;

  @BeforeEach
  void read() {
    document = Service.json(Service.asking().get("/q/openapi?format=json"));
    schemas = new PublishedSchemas(document);
  }

  @Test
  void samplesAndTheirAnswersFitTheirSchemas() throws IOException {
    for (Sample sample : Sample.all()) {
      JsonNode operation = operation(sample);
      if (sample.status() == 200 && !sample.body().isEmpty() && sample.bodyType().equals(JSON)) {
        JsonNode schema = operation.at("/requestBody/content/application~1json/schema");
        assertThat(schemas.violations(schema, Service.JSON.readTree(sample.body())))
            .as(sample.name())
            .isEmpty();
      }
      if (sample.accept().equals(JSON)) {
        Response response = answer(sample);
        JsonNode schema =
            schemas
                .resolved(operation.path("responses").path(String.valueOf(sample.status())))
                .path("content")
                .path(response.contentType().split(";")[0])
                .path("schema");
        assertThat(schema.isMissingNode()).as(sample.name()).isFalse();
        assertThat(schemas.violations(schema, Service.json(response))).as(sample.name()).isEmpty();
      }
    }
  }

  @Test
  void answersToRandomPlansFitTheirSchema() {
    assertThat(violations(new RandomPlans(SEED)::next, RANDOM_PLANS, RANDOM_PLANS / 2)).isEmpty();
  }

  /** At the ends of what a plan may hold figures get large, but never beyond a stated bound. */
  @Test
  void answersToExtremePlansFitTheirSchema() {
    assertThat(violations(new ExtremePlans(SEED)::next, EXTREME_PLANS, EXTREME_PLANS / 3))
        .isEmpty();
  }

  /** What fits the validator only because it looks at nothing would pass every other test. */
  @Test
  void theValidatorRefusesWhatTheDocumentDoesNotHave() {
    Sample sample = Sample.all().get(0);
    JsonNode schema = estimate();
    ObjectNode answer = (ObjectNode) Service.json(answer(sample));
    assertThat(schemas.violations(schema, answer)).isEmpty();
    ((ObjectNode) answer.at("/estimate/digester/annual")).put("lidAboveScaldHours", 8761);
    ((ObjectNode) answer.at("/estimate/verdicts/0")).put("answer", "perhaps");
    ((ObjectNode) answer.path("meta")).remove("version");
    answer.put("unheardOf", true);
    assertThat(schemas.violations(schema, answer))
        .anySatisfy(text -> assertThat(text).contains("lidAboveScaldHours", "8760"))
        .anySatisfy(text -> assertThat(text).contains("answer", "enumeration"))
        .anySatisfy(text -> assertThat(text).contains("version", "required"))
        .anySatisfy(text -> assertThat(text).contains("unheardOf"));
  }

  /** Violations of the answers, each with its plan; at least so many plans must be answered. */
  private List<String> violations(Supplier<ObjectNode> plans, int most, int least) {
    JsonSchema schema = schemas.compiled(estimate());
    List<String> requests = Stream.generate(plans).limit(most).map(JsonNode::toString).toList();
    List<List<String>> answered =
        requests.parallelStream()
            .map(PublishedSchemasTest::estimated)
            .flatMap(Optional::stream)
            .map(
                estimated ->
                    PublishedSchemas.violations(schema, estimated.answer()).stream()
                        .map(violation -> violation + " of " + estimated.request())
                        .toList())
            .toList();
    assertThat(answered).hasSizeGreaterThanOrEqualTo(least);
    return answered.stream().flatMap(List::stream).toList();
  }

  /** A plan with its answer; nothing if the plan is refused. */
  private static Optional<Estimated> estimated(String request) {
    PlanDocument plan = PlanDocument.read(request.getBytes(StandardCharsets.UTF_8));
    try {
      Answer<PlanEstimate> answer =
          Marshlight.estimate(new Marshlight.Request(plan.plan(), Stage.LOOP, true, plan.sha256()));
      return Optional.of(new Estimated(request, Service.JSON.readTree(ContractJson.write(answer))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (Faults refused) {
      assertThat(refused.list()).as(request).isNotEmpty();
      return Optional.empty();
    }
  }

  private JsonNode estimate() {
    return document.at(
        "/paths/~1v1~1estimates~1loop/post/responses/200/content/application~1json/schema");
  }

  private static Response answer(Sample sample) {
    return sample.body().isEmpty()
        ? Service.asking().get(sample.path())
        : Service.post(
            sample.path(), sample.body().getBytes(StandardCharsets.UTF_8), sample.bodyType());
  }

  private JsonNode operation(Sample sample) {
    for (var path : document.path("paths").properties()) {
      if (sample.route().matches(path.getKey().replaceAll("\\{[^}]*}", "[^/]+"))) {
        JsonNode operation = path.getValue().path(sample.method().toLowerCase());
        if (!operation.isMissingNode()) {
          return operation;
        }
      }
    }
    throw new AssertionError("no operation for " + sample);
  }

  /** A plan as it is sent, and the answer. */
  private record Estimated(String request, JsonNode answer) {}
}
