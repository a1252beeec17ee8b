package org.marshlight.http.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.marshlight.http.form.Item.Kind;

/**
 * The plan that a form without scripts sends: each field is named by its pointer. Whatever cannot
 * be taken for a number stays a text, so that the plan's own check tells what is wrong with it.
 */
public final class SubmittedPlan {

  /** Name of the tick that says that the plan has a section, before its pointer. */
  public static final String HAS = "has:";

  private static final String CLIMATE_ID = "/site/climate/id";
  private static final String NORMALS = "/site/climate/monthly/";

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private SubmittedPlan() {}

  /**
   * The plan.
   *
   * @param fields values by name, as the form sent them
   */
  public static ObjectNode of(Map<String, List<String>> fields) {
    Branch root = new Branch();
    boolean listedClimate = !first(fields.get(CLIMATE_ID)).isBlank();
    fields.forEach(
        (name, values) -> {
          if (name.startsWith(HAS)) {
            root.reach(name.substring(HAS.length()));
          } else if (name.startsWith("/")
              && has(fields, name)
              && !(listedClimate && name.startsWith(NORMALS))) {
            put(root, name, values);
          }
        });
    return (ObjectNode) root.json();
  }

  /** Whether the section of a field is ticked, if it is one that can be. */
  private static boolean has(Map<String, List<String>> fields, String name) {
    int end = name.indexOf('/', 1);
    String section = end < 0 ? name : name.substring(0, end);
    boolean optional = end > 0 && FieldKind.at(section).filter(Kind.SECTION::equals).isPresent();
    return !optional || fields.containsKey(HAS + section);
  }

  private static void put(Branch root, String pointer, List<String> values) {
    List<String> filled = values.stream().map(String::trim).filter(v -> !v.isEmpty()).toList();
    if (filled.isEmpty()) {
      return;
    }
    Kind kind = FieldKind.at(pointer).orElse(Kind.TEXT);
    if (kind == Kind.MONTHS || kind == Kind.CHOICES) {
      Branch list = root.reach(pointer);
      for (int i = 0; i < filled.size(); i++) {
        list.leaves.put(String.valueOf(i), leaf(kind, filled.get(i)));
      }
    } else {
      int last = pointer.lastIndexOf('/');
      root.reach(pointer.substring(0, last))
          .leaves
          .put(pointer.substring(last + 1), leaf(kind, filled.get(0)));
    }
  }

  private static JsonNode leaf(Kind kind, String text) {
    return switch (kind) {
      case NUMBER, MONTHS, TWELVE, SECTORS -> number(text);
      case FLAG -> JSON.booleanNode(text.equals("true"));
      default -> JSON.textNode(text);
    };
  }

  private static JsonNode number(String text) {
    try {
      double value = Double.parseDouble(text);
      boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
      return whole ? JSON.numberNode((long) value) : JSON.numberNode(value);
    } catch (NumberFormatException e) {
      return JSON.textNode(text);
    }
  }

  private static String first(List<String> values) {
    return values == null || values.isEmpty() ? "" : values.get(0);
  }

  /** A record or list that is being filled. */
  private static final class Branch {

    private final Map<String, JsonNode> leaves = new LinkedHashMap<>();
    private final Map<String, Branch> branches = new LinkedHashMap<>();

    /** The branch that a pointer names, made if need be. */
    private Branch reach(String pointer) {
      Branch branch = this;
      for (String token : pointer.split("/")) {
        if (!token.isEmpty()) {
          branch = branch.branches.computeIfAbsent(token, t -> new Branch());
        }
      }
      return branch;
    }

    private JsonNode json() {
      boolean list =
          !(leaves.isEmpty() && branches.isEmpty())
              && leaves.keySet().stream().allMatch(Branch::isIndex)
              && branches.keySet().stream().allMatch(Branch::isIndex);
      return list ? array() : object();
    }

    private JsonNode object() {
      ObjectNode object = JSON.objectNode();
      leaves.forEach(object::set);
      branches.forEach((name, branch) -> object.set(name, branch.json()));
      return object;
    }

    private JsonNode array() {
      TreeMap<Integer, JsonNode> inOrder = new TreeMap<>();
      leaves.forEach((index, leaf) -> inOrder.put(Integer.valueOf(index), leaf));
      branches.forEach((index, branch) -> inOrder.put(Integer.valueOf(index), branch.json()));
      List<JsonNode> elements = new ArrayList<>(inOrder.values());
      return JSON.arrayNode().addAll(elements);
    }

    private static boolean isIndex(String token) {
      return token.matches("\\d{1,4}");
    }
  }
}
