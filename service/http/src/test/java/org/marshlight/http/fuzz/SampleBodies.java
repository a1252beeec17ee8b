package org.marshlight.http.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.SplittableRandom;
import org.marshlight.http.contract.Sample;
import org.marshlight.http.studies.StudyKind;
import org.marshlight.loop.Plan;

/** The sample requests from which random ones are made, with the least work that a study takes. */
final class SampleBodies {

  static final ObjectMapper JSON = new ObjectMapper();
  static final String JSON_TYPE = "application/json";

  /** Settings of studies that say how much work they take, and values that take little. */
  private static final List<Setting> WORK =
      List.of(
          new Setting("draws", 16, 64),
          new Setting("points", 16, 16),
          new Setting("trajectories", 2, 4));

  private static final List<Body> BODIES =
      Sample.all().stream()
          .filter(sample -> sample.method().equals("POST") && sample.bodyType().equals(JSON_TYPE))
          .filter(sample -> sample.status() == 200 && !sample.path().contains("formulas"))
          .map(SampleBodies::body)
          .toList();

  private static final List<Body> PLANS =
      BODIES.stream().filter(body -> body.type() == Plan.class).toList();

  private static final List<Body> STUDIES =
      BODIES.stream().filter(body -> body.type() != Plan.class).toList();

  private SampleBodies() {}

  /** A plan that is asked for an estimate. */
  static Body plan(SplittableRandom random) {
    return PLANS.get(random.nextInt(PLANS.size()));
  }

  /** A request for a study. */
  static Body study(SplittableRandom random) {
    return STUDIES.get(random.nextInt(STUDIES.size()));
  }

  /** Holds what a study takes to a little, whatever was changed in its request. */
  static void lighten(JsonNode body, Body sample, SplittableRandom random) {
    if (sample.type() == Plan.class || !(body instanceof ObjectNode request)) {
      return;
    }
    for (Setting setting : WORK) {
      JsonNode value = request.path(setting.name());
      boolean heavy = value.isMissingNode() || value.isNull() || value.asInt() > setting.most();
      if (heavy && request.has("plan") && has(sample, setting.name())) {
        request.put(setting.name(), setting.least() + random.nextInt(4));
      }
    }
  }

  private static boolean has(Body sample, String setting) {
    for (var component : sample.type().getRecordComponents()) {
      if (component.getName().equals(setting)) {
        return true;
      }
    }
    return false;
  }

  private static Body body(Sample sample) {
    String path = sample.path().replaceFirst("\\?.*", "");
    return new Body(
        path,
        StudyKind.at(path).<Class<? extends Record>>map(StudyKind::sent).orElse(Plan.class),
        sample.body());
  }

  /**
   * A body that is answered.
   *
   * @param path where it is sent
   * @param type the record that it is
   * @param text the body
   */
  record Body(String path, Class<? extends Record> type, String text) {

    /** The body as a tree of its own. */
    ObjectNode tree() {
      try {
        return (ObjectNode) JSON.readTree(text);
      } catch (JsonProcessingException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private record Setting(String name, int least, int most) {}
}
