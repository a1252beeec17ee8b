package org.marshlight.http.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.marshlight.evidence.FormulaBook;
import org.marshlight.http.contract.Sample;

/**
 * Sample requests that were damaged: in what they say (a field gone, of another type, huge, tiny,
 * negative, misspelt, nested, repeated) or byte by byte. Every route that takes a body gets some.
 */
final class DamagedRequests {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final List<JsonNode> ODD_VALUES =
      List.of(
          NODES.nullNode(),
          NODES.numberNode(0),
          NODES.numberNode(-1),
          NODES.numberNode(1),
          NODES.numberNode(1e300),
          NODES.numberNode(-1e300),
          NODES.numberNode(Long.MAX_VALUE),
          NODES.numberNode(Double.MIN_VALUE),
          NODES.numberNode(1e-308),
          NODES.numberNode(1e-15),
          NODES.numberNode(2.5),
          NODES.numberNode(2147483648L),
          NODES.textNode(""),
          NODES.textNode("12"),
          NODES.textNode("\u0000\u001f\u2028\ud83d\ude00 {x} ${x} <b>&'\"%"),
          NODES.textNode("\u202e\u0301\ufeff\uffff"),
          NODES.textNode("long ".repeat(300)),
          NODES.textNode("/tank/liquidVolumeM3"),
          NODES.booleanNode(true),
          NODES.booleanNode(false),
          NODES.arrayNode(),
          NODES.arrayNode().add(1).add("2").addNull(),
          NODES.objectNode(),
          NODES.objectNode().put("id", 1));

  private static final List<String> TOKENS =
      List.of(
          "{", "}", "[", "]", ",", ":", "\"", "\\", "\\u0000", "\\ud800", "null", "true", "-",
          "1e999", "-0.0", "1e-400", "0x1", "NaN", "//", "00", "\ufeff", " ", "\t");

  private static final String FORM = "application/x-www-form-urlencoded";
  private static final int LONGEST_WEATHER = 200_000;

  private final long seed;
  private final SplittableRandom random;

  private DamagedRequests(long seed) {
    this.seed = seed;
    this.random = new SplittableRandom(seed);
  }

  /** The request of a seed. */
  static FuzzRequest of(long seed) {
    DamagedRequests requests = new DamagedRequests(seed);
    double kind = requests.random.nextDouble();
    if (kind < 0.05) {
      return requests.formula();
    }
    if (kind < 0.08) {
      return requests.form();
    }
    if (kind < 0.09) {
      return requests.weather();
    }
    return kind < 0.35 ? requests.study() : requests.estimate();
  }

  private FuzzRequest formula() {
    List<String> ids = List.copyOf(FormulaBook.standard().ids());
    String id = ids.get(random.nextInt(ids.size()));
    ObjectNode body = NODES.objectNode();
    ObjectNode inputs = body.putObject("inputs");
    FormulaBook.standard()
        .find(id)
        .orElseThrow()
        .parameters()
        .forEach(parameter -> inputs.put(parameter.name(), parameter.high()));
    damage(body);
    return request("/v1/formulas/" + id, SampleBodies.JSON_TYPE, bytes(body));
  }

  private FuzzRequest form() {
    ObjectNode plan = SampleBodies.plan(random).tree();
    damage(plan);
    String encoded = "plan=" + URLEncoder.encode(plan.toString(), StandardCharsets.UTF_8);
    return new FuzzRequest(
        seed,
        "/report",
        FORM,
        "text/html",
        random.nextInt(3) > 0
            ? encoded.getBytes(StandardCharsets.US_ASCII)
            : inBytes(encoded.getBytes(StandardCharsets.US_ASCII)));
  }

  private FuzzRequest weather() {
    Sample file =
        Sample.all().stream()
            .filter(sample -> sample.bodyType().startsWith("text/plain"))
            .findFirst()
            .orElseThrow();
    byte[] body = file.body().getBytes(StandardCharsets.ISO_8859_1);
    byte[] part =
        random.nextBoolean() ? body : Arrays.copyOf(body, random.nextInt(LONGEST_WEATHER));
    return new FuzzRequest(
        seed, file.path(), file.bodyType(), SampleBodies.JSON_TYPE, inBytes(part));
  }

  private FuzzRequest estimate() {
    SampleBodies.Body sample = SampleBodies.plan(random);
    ObjectNode plan = sample.tree();
    damage(plan);
    String path = random.nextInt(3) == 0 ? sample.path() : "/v1/estimates/loop";
    return request(path, SampleBodies.JSON_TYPE, bytes(plan));
  }

  private FuzzRequest study() {
    SampleBodies.Body sample = SampleBodies.study(random);
    ObjectNode body = sample.tree();
    damage(body);
    SampleBodies.lighten(body, sample, random);
    boolean costOnly = random.nextInt(3) > 0;
    return request(
        sample.path() + (costOnly ? "?costOnly=true" : ""), SampleBodies.JSON_TYPE, bytes(body));
  }

  private FuzzRequest request(String path, String accept, byte[] body) {
    return new FuzzRequest(seed, path, SampleBodies.JSON_TYPE, accept, body);
  }

  private void damage(ObjectNode body) {
    if (random.nextInt(3) == 0) {
      scaleOneNumber(body);
      return;
    }
    for (int change = random.nextInt(4); change >= 0; change--) {
      List<ContainerNode<?>> containers = new ArrayList<>();
      collect(body, containers);
      ContainerNode<?> container = containers.get(random.nextInt(containers.size()));
      JsonNode value = ODD_VALUES.get(random.nextInt(ODD_VALUES.size())).deepCopy();
      if (container instanceof ObjectNode object) {
        damage(object, value);
      } else if (container instanceof ArrayNode list) {
        damage(list, value);
      }
    }
  }

  /** Damage so slight that the request may still be legal. */
  private void scaleOneNumber(ObjectNode body) {
    List<ObjectNode> owners = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<ContainerNode<?>> containers = new ArrayList<>();
    collect(body, containers);
    for (ContainerNode<?> container : containers) {
      if (container instanceof ObjectNode object) {
        for (var entry : object.properties()) {
          if (entry.getValue().isNumber()) {
            owners.add(object);
            names.add(entry.getKey());
          }
        }
      }
    }
    if (!owners.isEmpty()) {
      int at = random.nextInt(owners.size());
      double number = owners.get(at).get(names.get(at)).doubleValue();
      owners.get(at).put(names.get(at), number * Math.pow(10, random.nextInt(13) - 6));
    }
  }

  private static void collect(JsonNode node, List<ContainerNode<?>> containers) {
    if (node instanceof ContainerNode<?> container) {
      containers.add(container);
    }
    node.forEach(child -> collect(child, containers));
  }

  private void damage(ObjectNode object, JsonNode value) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    if (names.isEmpty()) {
      object.set("unknown", value);
      return;
    }
    String name = names.get(random.nextInt(names.size()));
    JsonNode old = object.get(name);
    switch (random.nextInt(7)) {
      case 0 -> object.remove(name);
      case 1, 2 -> object.set(name, value);
      case 3 -> object.set(name + "x", object.remove(name));
      case 4 -> object.set(name, nested(old));
      default -> {
        if (old.isNumber()) {
          object.put(name, old.doubleValue() * Math.pow(10, random.nextInt(40) - 20));
        } else {
          object.set(name, value);
        }
      }
    }
  }

  private void damage(ArrayNode list, JsonNode value) {
    if (list.isEmpty()) {
      list.add(value);
      return;
    }
    int at = random.nextInt(list.size());
    switch (random.nextInt(4)) {
      case 0 -> list.add(list.get(at).deepCopy());
      case 1 -> list.remove(at);
      case 2 -> {
        for (int i = 0; i < 30; i++) {
          list.add(list.get(at).deepCopy());
        }
      }
      default -> list.set(at, value);
    }
  }

  private JsonNode nested(JsonNode old) {
    JsonNode node = old.deepCopy();
    for (int depth = 1 + random.nextInt(40); depth > 0; depth--) {
      node = random.nextBoolean() ? NODES.arrayNode().add(node) : NODES.objectNode().set("a", node);
    }
    return node;
  }

  /** The document, now and then damaged in its bytes or with a name given twice. */
  private byte[] bytes(ObjectNode body) {
    String text = body.toString();
    return switch (random.nextInt(6)) {
      case 0 -> inBytes(text.getBytes(StandardCharsets.UTF_8));
      case 1 -> twice(text).getBytes(StandardCharsets.UTF_8);
      default -> text.getBytes(StandardCharsets.UTF_8);
    };
  }

  /** The same document with one of its names given twice. */
  private String twice(String text) {
    int start = text.indexOf("\"", random.nextInt(text.length()));
    int colon = start < 0 ? -1 : text.indexOf("\":", start + 1);
    return colon < 0
        ? text
        : text.substring(0, start)
            + text.substring(start, colon + 1)
            + ":1,"
            + text.substring(start);
  }

  private byte[] inBytes(byte[] body) {
    byte[] bytes = body;
    for (int change = random.nextInt(3); change >= 0 && bytes.length > 0; change--) {
      int at = random.nextInt(bytes.length);
      int to = Math.min(bytes.length, at + 1 + random.nextInt(20));
      ByteArrayOutputStream damaged = new ByteArrayOutputStream();
      damaged.write(bytes, 0, at);
      switch (random.nextInt(4)) {
        case 0 -> damaged.write(bytes, to, bytes.length - to);
        case 1 -> {
          damaged.writeBytes(
              TOKENS.get(random.nextInt(TOKENS.size())).getBytes(StandardCharsets.UTF_8));
          damaged.write(bytes, at, bytes.length - at);
        }
        case 2 -> {
          damaged.write(random.nextInt(256));
          damaged.write(bytes, at + 1, bytes.length - at - 1);
        }
        default -> {
          if (random.nextBoolean()) {
            damaged.write(bytes, at, to - at);
            damaged.write(bytes, at, bytes.length - at);
          }
        }
      }
      bytes = damaged.toByteArray();
    }
    return bytes;
  }
}
