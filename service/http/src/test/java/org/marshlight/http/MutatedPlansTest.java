package org.marshlight.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** However a plan is spoilt, it is answered or refused, and never makes the service fail. */
@QuarkusTest
class MutatedPlansTest {

  private static final int PLANS_PER_SEED = 15;
  private static final int MOST_CHANGES = 4;

  private static final List<JsonNode> ODD_VALUES =
      List.of(
          JsonNodeFactory.instance.nullNode(),
          JsonNodeFactory.instance.numberNode(0),
          JsonNodeFactory.instance.numberNode(-1),
          JsonNodeFactory.instance.numberNode(1),
          JsonNodeFactory.instance.numberNode(12),
          JsonNodeFactory.instance.numberNode(0.001),
          JsonNodeFactory.instance.numberNode(1e300),
          JsonNodeFactory.instance.numberNode(2.5),
          JsonNodeFactory.instance.textNode(""),
          JsonNodeFactory.instance.textNode("{braces} $ \u0000 \ud83d\ude00"),
          JsonNodeFactory.instance.textNode("earth"),
          JsonNodeFactory.instance.booleanNode(true),
          JsonNodeFactory.instance.arrayNode(),
          JsonNodeFactory.instance.objectNode());

  static IntStream seeds() {
    return IntStream.range(0, 20);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noPlanMakesTheServiceFail(int seed) throws Exception {
    Random random = new Random(seed);
    for (int i = 0; i < PLANS_PER_SEED; i++) {
      JsonNode plan = Service.JSON.readTree(Service.contractPlan());
      for (int change = random.nextInt(MOST_CHANGES); change >= 0; change--) {
        mutate(plan, random);
      }
      Response response = Service.post("/v1/estimates/loop", plan.toString());
      String told = "seed " + seed + ", plan " + plan + ", answer " + response.asString();
      assertThat(response.statusCode()).as(told).isIn(200, 400);
      assertThat(response.asString()).as(told).doesNotContain("NaN").doesNotContain("Infinity");
      Service.cautioned(response);
    }
  }

  private static void mutate(JsonNode plan, Random random) {
    List<ContainerNode<?>> containers = new ArrayList<>();
    collect(plan, containers);
    ContainerNode<?> container = containers.get(random.nextInt(containers.size()));
    JsonNode value = ODD_VALUES.get(random.nextInt(ODD_VALUES.size())).deepCopy();
    if (container instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      if (names.isEmpty() || random.nextInt(10) == 0) {
        object.set("n" + random.nextInt(3), value);
      } else {
        change(object, names.get(random.nextInt(names.size())), value, random);
      }
    } else if (container instanceof ArrayNode array) {
      change(array, value, random);
    }
  }

  private static void change(ObjectNode object, String name, JsonNode value, Random random) {
    JsonNode old = object.path(name);
    switch (random.nextInt(4)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name, value);
      default -> {
        if (old.isNumber()) {
          object.put(name, old.doubleValue() * Math.pow(10, random.nextInt(7) - 3));
        } else {
          object.remove(name);
        }
      }
    }
  }

  private static void change(ArrayNode array, JsonNode value, Random random) {
    int at = array.isEmpty() ? -1 : random.nextInt(array.size());
    switch (random.nextInt(3)) {
      case 0 -> array.add(value);
      case 1 -> array.add(at < 0 ? value : array.get(at).deepCopy());
      default -> {
        if (at >= 0 && random.nextBoolean()) {
          array.remove(at);
        } else if (at >= 0) {
          array.set(at, value);
        }
      }
    }
  }

  private static void collect(JsonNode node, List<ContainerNode<?>> containers) {
    if (node instanceof ContainerNode<?> container) {
      containers.add(container);
    }
    node.forEach(child -> collect(child, containers));
  }
}
