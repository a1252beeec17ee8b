package org.marshlight.http.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.marshlight.climate.BuiltInClimates;
import org.marshlight.climate.HoursDesign;
import org.marshlight.contract.Quantity;
import org.marshlight.contract.RecordShape;
import org.marshlight.contract.WireName;
import org.marshlight.evidence.Catalogues;
import org.marshlight.evidence.CoefficientBook;
import org.marshlight.evidence.CoefficientRow;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.evidence.FormulaEntry;

/**
 * Requests whose every field lies within its own bounds, and many at them: sample requests with one
 * or some or all of their numbers drawn anew, and fields added that the samples leave out. The
 * fields and their bounds are read from the records of the contract. What such fields say together
 * may still be refused.
 */
final class ExtremeRequests {

  private static final List<String> STAGES =
      List.of("digester", "wetland", "crop", "ethanol", "compost");

  private final long seed;
  private final SplittableRandom random;

  /** Probability that a number is drawn anew, and that a field which is not there is added. */
  private double changed;

  private double added;

  private ExtremeRequests(long seed) {
    this.seed = seed;
    this.random = new SplittableRandom(seed);
  }

  /** The request of a seed. */
  static FuzzRequest of(long seed) {
    ExtremeRequests requests = new ExtremeRequests(seed);
    double kind = requests.random.nextDouble();
    if (kind < 0.05) {
      return requests.formula();
    }
    return kind < 0.18 ? requests.study() : requests.estimate();
  }

  private FuzzRequest formula() {
    List<FormulaEntry> entries = FormulaBook.standard().entries();
    FormulaEntry entry = entries.get(random.nextInt(entries.size()));
    ObjectNode body = SampleBodies.JSON.createObjectNode();
    ObjectNode inputs = body.putObject("inputs");
    for (FormulaEntry.Parameter parameter : entry.parameters()) {
      inputs.put(
          parameter.name(), ExtremeNumbers.within(parameter.low(), parameter.high(), random));
    }
    return request("/v1/formulas/" + entry.id(), SampleBodies.JSON_TYPE, body);
  }

  private FuzzRequest estimate() {
    SampleBodies.Body sample = SampleBodies.plan(random);
    ObjectNode plan = drawn(sample);
    if (random.nextInt(4) == 0) {
      coefficients(plan, "coefficients");
    }
    if (random.nextInt(6) == 0) {
      String stage = STAGES.get(random.nextInt(STAGES.size()));
      boolean working = random.nextBoolean();
      return request(
          "/v1/estimates/" + stage + (working ? "?working=true" : ""),
          SampleBodies.JSON_TYPE,
          plan);
    }
    String path = random.nextInt(8) == 0 ? "/v1/estimates/loop?working=true" : "/v1/estimates/loop";
    String accept =
        switch (random.nextInt(12)) {
          case 0 -> "text/csv";
          case 1 -> "text/html";
          default -> SampleBodies.JSON_TYPE;
        };
    return request(path, accept, plan);
  }

  private FuzzRequest study() {
    SampleBodies.Body sample = SampleBodies.study(random);
    ObjectNode body = drawn(sample);
    ranges(body.path("vary"), "low", "high");
    ranges(body.path("vary"), "from", "to");
    ranges(body.path("free"), "low", "high");
    SampleBodies.lighten(body, sample, random);
    String accept = random.nextInt(4) == 0 ? "application/x-ndjson" : SampleBodies.JSON_TYPE;
    return request(sample.path(), accept, body);
  }

  private FuzzRequest request(String path, String accept, JsonNode body) {
    return new FuzzRequest(
        seed,
        path,
        SampleBodies.JSON_TYPE,
        accept,
        body.toString().getBytes(StandardCharsets.UTF_8));
  }

  private ObjectNode drawn(SampleBodies.Body sample) {
    changed = new double[] {0.02, 0.1, 0.5, 1}[random.nextInt(4)];
    added = new double[] {0, 0.02, 0.2}[random.nextInt(3)];
    ObjectNode body = sample.tree();
    record(body, sample.type());
    return body;
  }

  /** Ranges that are narrow, or near zero. */
  private void ranges(JsonNode list, String first, String second) {
    for (JsonNode element : list) {
      if (element instanceof ObjectNode range && range.has(first) && random.nextBoolean()) {
        double low = random.nextBoolean() ? 0 : range.path(first).asDouble();
        double width =
            random.nextBoolean()
                ? ExtremeNumbers.tiny(random)
                : Math.abs(low) * Math.pow(10, -random.nextInt(15));
        range.put(first, low);
        range.put(second, low + width);
      }
    }
  }

  private void record(ObjectNode node, Class<? extends Record> type) {
    for (RecordShape.Field field : RecordShape.of(type).fields()) {
      JsonNode value = node.path(field.name());
      boolean there = !value.isMissingNode() && !value.isNull();
      if (there ? redrawn(field) : random.nextDouble() < added) {
        put(node, field, value);
      } else if (there) {
        within(value, field);
      }
    }
  }

  private boolean redrawn(RecordShape.Field field) {
    boolean number = field.quantity().isPresent();
    return random.nextDouble() < (number ? changed : changed / 10);
  }

  /** Changes what stands in a section that stays. */
  private void within(JsonNode value, RecordShape.Field field) {
    if (value instanceof ObjectNode object && field.type().isRecord()) {
      record(object, field.type().asSubclass(Record.class));
    } else if (value instanceof ArrayNode list && field.elementType().isRecord()) {
      for (JsonNode element : list) {
        record((ObjectNode) element, field.elementType().asSubclass(Record.class));
      }
    }
  }

  private void put(ObjectNode node, RecordShape.Field field, JsonNode old) {
    Class<?> type = field.elementType();
    if (type == HoursDesign.class || type == JsonNode.class) {
      return;
    }
    if (field.type() == Map.class) {
      coefficients(node, field.name());
    } else if (field.type() == List.class) {
      list(node, field, old);
    } else if (type.isRecord()) {
      if (!(old instanceof ObjectNode)) {
        record(node.putObject(field.name()), type.asSubclass(Record.class));
      } else {
        record((ObjectNode) old, type.asSubclass(Record.class));
      }
    } else {
      single(field).ifPresent(value -> node.set(field.name(), value));
    }
  }

  private void list(ObjectNode node, RecordShape.Field field, JsonNode old) {
    Class<?> type = field.elementType();
    int size = old.isArray() ? old.size() : field.monthly() ? 12 : 1;
    if (type.isRecord() && !old.isArray()) {
      record(node.putArray(field.name()).addObject(), type.asSubclass(Record.class));
      return;
    }
    if (type.isRecord() || type == String.class && field.catalogue().isEmpty()) {
      within(old, field);
      return;
    }
    List<JsonNode> values = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      single(field).ifPresent(values::add);
    }
    if (type == Double.class && random.nextInt(3) == 0 && !values.isEmpty()) {
      Collections.fill(values, values.get(0));
    }
    node.putArray(field.name()).addAll(values);
  }

  private Optional<JsonNode> single(RecordShape.Field field) {
    Class<?> type = field.elementType();
    var nodes = SampleBodies.JSON.getNodeFactory();
    Quantity quantity = field.quantity().orElse(null);
    if (type == Double.class && quantity != null) {
      boolean unitBeside = quantity.unit().equals(Quantity.UNIT_BESIDE);
      double value =
          unitBeside
              ? ExtremeNumbers.within(-10, 10, random)
              : ExtremeNumbers.within(quantity.min(), quantity.max(), random);
      return Optional.of(nodes.numberNode(value));
    }
    if (type == Integer.class && quantity != null) {
      return Optional.of(
          nodes.numberNode(ExtremeNumbers.wholeWithin(quantity.min(), quantity.max(), random)));
    }
    if (type == Boolean.class) {
      return Optional.of(nodes.booleanNode(random.nextBoolean()));
    }
    if (type.isEnum()) {
      Object[] choices = type.getEnumConstants();
      return Optional.of(
          nodes.textNode(WireName.of((Enum<?>) choices[random.nextInt(choices.length)])));
    }
    return field.catalogue().map(name -> nodes.textNode(id(name)));
  }

  private String id(String catalogue) {
    List<String> ids = new ArrayList<>();
    if (catalogue.equals("climates")) {
      BuiltInClimates.standard().ids().forEach(ids::add);
    } else {
      Catalogues.standard().ids(catalogue).forEach(ids::add);
    }
    return ids.get(random.nextInt(ids.size()));
  }

  private void coefficients(ObjectNode node, String name) {
    ObjectNode overrides = node.putObject(name);
    List<CoefficientRow> rows = CoefficientBook.standard().rows();
    for (int i = random.nextInt(3) == 0 ? 100 : 1 + random.nextInt(6); i > 0; i--) {
      CoefficientRow row = rows.get(random.nextInt(rows.size()));
      overrides.put(row.id(), ExtremeNumbers.within(row.least(), row.most(), random));
    }
  }
}
